/** The ladder's places, search, symbols and the meter on it. */
export const ladder = {
  'ladder.place.wire': 'wire {wire}',
  'ladder.place.earth': 'earth',
  'ladder.place.terminal': '{device}, terminal {terminal}, wire {wire}',

  'ladder.tools': 'Ladder tools',
  'ladder.search': 'Find a wire, terminal or device',
  'ladder.search.placeholder': 'Find on ladder',
  'ladder.search.count': '{count} found',
  'ladder.search.none': 'Nothing on this ladder has that name.',

  'ladder.symbols.IEC': 'IEC symbols',
  'ladder.symbols.NA': 'N. American symbols',
  'ladder.symbols.IEC.long': 'IEC symbols (IEC 60617). Switch to North American',
  'ladder.symbols.NA.long': 'N. American symbols. Switch to IEC 60617',

  'ladder.keys.leads':
    'Arrow keys walk the terminals, Enter puts the lead in hand there, Delete takes it off. Plus and minus zoom, 0 shows the diagram at its own size. Leads can also be placed by name in the tools before the diagram.',

  'ladder.leads': 'Meter leads',
  'ladder.leads.from': 'Red +',
  'ladder.leads.to': 'Black −',
  'ladder.leads.clamp': 'Clamp',
  'ladder.lead.from': 'red lead',
  'ladder.lead.to': 'black lead',
  'ladder.lead.clamp': 'clamp',
  'ladder.leads.in-holder': 'in its holder',
  'ladder.leads.holder': '{lead}: {place}. Take it in hand, or drag it to a terminal',
  'ladder.leads.here': 'Put {lead} here',
  'ladder.leads.hint':
    'Drag a lead to a terminal, or tap the terminal. By keyboard: arrow keys in the diagram, then Enter.',
  'ladder.leads.hint-paper':
    'As on paper: cold and dead. Put leads on by a tap, by dragging, or with arrow keys and Enter.',
  'ladder.leads.now': '{lead} on {place}',
  'ladder.leads.off': '{lead} in its holder',

  'ladder.meter.show': 'Multimeter',
  'ladder.meter.kind': 'What it measures',
  'ladder.meter.volts': 'volts',
  'ladder.meter.ohms': 'ohms',
  'ladder.meter.continuity': 'continuity',
  'ladder.meter.amps': 'clamp amps',
  'ladder.meter.nothing': 'Not connected',
  'ladder.meter.clear': 'Leads off',
  'ladder.meter.practice':
    'A simulated meter. On real plant follow local codes, the equipment’s instructions and licensed practice.',
} as const;
