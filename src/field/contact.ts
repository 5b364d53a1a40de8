/** Where a change of any contact is noticed, so that what hangs on contacts works only then. */
export interface ContactBoard {
  changed: boolean;
}

/** A contact of a switch or relay: the place where the wiring network meets a device. */
export interface Contact {
  readonly board: ContactBoard;
  made: boolean;
}

/** A coil that holds an armature or a plunger: it is given volts, it is energised or not. */
export interface Coil {
  volts: number;
  energised: boolean;
}

export function createContactBoard(): ContactBoard {
  return { changed: true };
}

export function createContact(board: ContactBoard, made: boolean): Contact {
  return { board, made };
}

export function moveContact(contact: Contact, made: boolean): void {
  if (made === contact.made) return;
  contact.made = made;
  contact.board.changed = true;
}

export function createCoil(): Coil {
  return { volts: 0, energised: false };
}

/**
 * A coil pulls in at one voltage and holds down to a lower one, because the closed iron path
 * needs less current for the same force.
 */
export function energiseCoil(
  coil: Coil,
  volts: number,
  pullInVolts: number,
  dropOutVolts: number,
): void {
  coil.volts = volts;
  coil.energised = coil.energised ? volts >= dropOutVolts : volts >= pullInVolts;
}
