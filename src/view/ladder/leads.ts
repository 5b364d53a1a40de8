/** The two leads of a meter; volts read positive when the first is above the second. */
export type Lead = 'from' | 'to';

/** Where the leads are: a terminal (`fan-relay.coil:1`) or a wire; null in their holder. */
export interface LeadPlaces {
  readonly from: string | null;
  readonly to: string | null;
}

/** Leads, and the one that is placed next. */
export interface HeldLeads extends LeadPlaces {
  readonly hand: Lead;
}

export const NO_LEADS: HeldLeads = { from: null, to: null, hand: 'from' };

/** Puts one lead on a place; the other one is in hand then, unless a clamp has only one. */
export function putLead(leads: HeldLeads, lead: Lead, place: string, single = false): HeldLeads {
  const other: Lead = lead === 'from' ? 'to' : 'from';
  return { ...leads, [lead]: place, hand: single ? 'from' : other };
}

export function takeLead(leads: HeldLeads, lead: Lead): HeldLeads {
  return { ...leads, [lead]: null, hand: lead };
}

/** What a tap on a place does: takes off the lead that is on it, else puts the lead in hand there. */
export function tapPlace(leads: HeldLeads, place: string, single = false): HeldLeads {
  if (leads.from === place) return takeLead(leads, 'from');
  if (!single && leads.to === place) return takeLead(leads, 'to');
  return putLead(leads, single ? 'from' : leads.hand, place, single);
}
