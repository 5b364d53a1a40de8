/** Where a change of any contact is noticed, so that what hangs on contacts works only then. */
export interface ContactBoard {
  changed: boolean;
}

/** A contact of a switch or relay: the place where the wiring network meets a device. */
export interface Contact {
  readonly board: ContactBoard;
  made: boolean;
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
