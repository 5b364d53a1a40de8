/** Pieces of what any item says, and the items about conduct. */
export const quizConduct = {
  'quiz.list.between': ', ',
  'quiz.list.before-last': ' and ',
  'quiz.nothing-wrong': 'nothing is wrong',
  'quiz.check-at': '{what}, {moment}',

  'quiz.start.called': 'heat called for',
  'quiz.start.service': 'released to modulation: in service',
  'quiz.start.lockout': 'lockout in {step}: {cause}',
  'quiz.start.reset': 'lockout reset',
  'quiz.start.note': '{what} at {time}',
  'quiz.start.many': '{count} inputs of the controller changed at once at {time}',
  'quiz.start.ends': 'the record ends, still in {step}',
  'quiz.start.line': '{time} {what}',
  'quiz.start.line-with': '{time} {what}; {notes}',

  'quiz.conduct.asks': 'Done in this order, which course is the safe one?',
  'quiz.conduct.course': '{acts}.',
  'quiz.conduct.state': 'At that moment {state}.',

  'quiz.conduct.tells.rest':
    '{plant}: the burner is at rest, switched off at its own switch. The isolator is on and the gas cock is open.',
  'quiz.conduct.tells.found':
    '{plant}: you found the burner at rest, with the isolator on and the gas cock open.',
  'quiz.conduct.tells.step': '{plant}: the burner is in a start, in the step “{step}”.',
  'quiz.conduct.tells.service': '{plant}: the burner is in service.',
  'quiz.conduct.tells.lockout':
    '{plant}: a start has locked out in the step “{step}”. The panel says “{cause}”.',
  'quiz.conduct.tells.job': 'The work: {way} the {part}.',
  'quiz.conduct.tells.contact': 'You want to know whether the {device} is made.',
  'quiz.conduct.tells.suspected':
    'You suspect that the {device} is open where it should be made. You have a jumper with you.',
  'quiz.conduct.tells.opened':
    'Behind the gas cock, shut and locked, you have {way} the {part}. Everything is together again.',
  'quiz.conduct.tells.replaced':
    'With the isolator locked off and the circuit proved dead you have replaced the {part}.',
  'quiz.conduct.tells.two-resets':
    'You have pressed the reset twice since you came, and done nothing else. Both times it locked out in the same way.',
  'quiz.conduct.tells.unburnt':
    'The lockout is a few seconds old, and the gas that went in did not burn.',
  'quiz.conduct.tells.smell': 'As you come in, the room smells of gas.',
  'quiz.conduct.tells.dial':
    'The {part} has stopped the burner more than once this week. It stands as the commissioning sheet has it ({setting}).',
  'quiz.conduct.tells.servo': 'You want to see what the servo of the {device} moves.',
  'quiz.conduct.tells.inside':
    'Something inside the fan or the burner is to be looked at or worked on.',

  'quiz.conduct.way.replace': 'replace',
  'quiz.conduct.way.clean': 'clean',
  'quiz.conduct.way.refit': 'refit',
  'quiz.conduct.way.tighten': 'tighten',
  'quiz.conduct.way.free': 'free',
  'quiz.conduct.way.realign': 'realign',
  'quiz.conduct.done.replace': 'replaced',
  'quiz.conduct.done.clean': 'cleaned',
  'quiz.conduct.done.refit': 'refitted',
  'quiz.conduct.done.tighten': 'tightened',
  'quiz.conduct.done.free': 'freed',
  'quiz.conduct.done.realign': 'realigned',

  'quiz.conduct.act.isolator-off': 'put the isolator off',
  'quiz.conduct.act.isolator-on': 'put the isolator on',
  'quiz.conduct.act.lock-off': 'lock the isolator off',
  'quiz.conduct.act.unlock-only': 'take your lock off the isolator',
  'quiz.conduct.act.back-on': 'take your lock off, put the isolator on',
  'quiz.conduct.act.cock-shut': 'shut the gas cock',
  'quiz.conduct.act.lock-shut': 'lock the gas cock shut',
  'quiz.conduct.act.cock-back': 'open the gas cock again',
  'quiz.conduct.act.cock-half': 'open the gas cock halfway',
  'quiz.conduct.act.lock-open': 'lock the gas cock open',
  'quiz.conduct.act.stop': 'press the emergency stop',
  'quiz.conduct.act.stop-out': 'release it',
  'quiz.conduct.act.burner-off': 'switch the burner off',
  'quiz.conduct.act.burner-on': 'switch the burner on',
  'quiz.conduct.act.history': 'read the lockout history',
  'quiz.conduct.act.smell': 'smell the air of the room',
  'quiz.conduct.act.hand-over': 'hand the plant over',
  'quiz.conduct.act.hand-over-jumper': 'hand over with a note about the jumper',
  'quiz.conduct.act.hand-over-set': 'hand over with a note of the new setting',
  'quiz.conduct.act.hand-over-held': 'hand over with the servo held',
  'quiz.conduct.act.hand-over-off':
    'hand over with the isolator off, for the operator to switch on',
  'quiz.conduct.act.hand-over-locked': 'hand the plant over with your lock on the isolator',
  'quiz.conduct.act.reset': 'press the reset',
  'quiz.conduct.act.reset-again': 'press the reset again',
  'quiz.conduct.act.reset-through-purge': 'press the reset, let the purge run to its end',
  'quiz.conduct.act.some-minutes': 'wait for five minutes',
  'quiz.conduct.act.a-minute': 'wait for a minute',
  'quiz.conduct.act.until-still': 'wait until the shaft stands still',
  'quiz.conduct.act.outside': 'wait outside with the doors open',
  'quiz.conduct.act.start': 'start the burner up into service',
  'quiz.conduct.act.repair': '{way} the {part}',
  'quiz.conduct.act.find-dead': 'find no volts between {place} and {other}',
  'quiz.conduct.act.meter-volts': 'measure volts across the {device}',
  'quiz.conduct.act.meter-ohms': 'measure ohms across the {device}',
  'quiz.conduct.act.meter-continuity': 'test continuity across the {device}',
  'quiz.conduct.act.spray': 'spray the joints {joints}',
  'quiz.conduct.act.look': 'look at the {place}',
  'quiz.conduct.act.see-shut': 'see that both main valves stand shut',
  'quiz.conduct.act.jumper-on': 'bridge the {device} with the isolator off',
  'quiz.conduct.act.jumper-off': 'take the jumper out',
  'quiz.conduct.act.set-lower': 'set the {part} well below the sheet',
  'quiz.conduct.act.set-higher': 'set the {part} well above the sheet',
  'quiz.conduct.act.set-sheet': 'set the {part} exactly to the sheet',
  'quiz.conduct.act.set-back': 'set it exactly to the sheet',
  'quiz.conduct.act.hold': 'hold the {servo} servo half open by hand',
  'quiz.conduct.act.let-go': 'let the servo go',

  'quiz.conduct.true.dead':
    'The {part} is worked on with the isolator locked off. Between {place} and {other}, where {before} stood before, the meter shows {now}.',
  'quiz.conduct.true.shut':
    'When the {part} is opened, the gas cock is shut and locked, so no gas can follow from the supply. On a real train what is left under pressure is let off first, as its instructions say.',
  'quiz.conduct.true.still':
    'When eyes or hands go in, no fuel is on, the isolator is locked off and the shaft stands at {speed}.',
  'quiz.conduct.true.volts-range':
    'On its volts range a meter may be put on a live circuit; it reads {volts} there.',
  'quiz.conduct.true.no-volts':
    'With the isolator off the meter shows {volts} between the leads, and neither of them is live, so the {range} range can tell the truth.',
  'quiz.conduct.true.tested':
    'The joint {joint} is wetted while {pressure} of gas stand behind it, so a leak would show.',
  'quiz.conduct.true.looked':
    'Before the third reset something is read that may say why it locks out.',
  'quiz.conduct.true.swept':
    'The furnace still holds {percent} % of what could burn. One reset brings a whole purge, and nothing lights before it is over.',
  'quiz.conduct.true.no-spark':
    'The air of the room is at about {percent} % of what could burn. The cock stops the gas, and nothing that could spark is touched.',
  'quiz.conduct.true.fired-jumper': 'No jumper is in when fuel is let to the burner.',
  'quiz.conduct.true.fired-adjust':
    'The dial stands as on the sheet when fuel is let to the burner.',
  'quiz.conduct.true.fired-stroke': 'No servo is held when fuel is let to the burner.',
  'quiz.conduct.true.left-jumper':
    'No fuel was on while the jumper was in, and it is out at the handover.',
  'quiz.conduct.true.left-adjust':
    'Whatever it was set to for a trial, the dial stands as on the sheet at the handover, and no fuel was on meanwhile.',
  'quiz.conduct.true.let-go':
    'No fuel is on while the {servo} servo is held, and it is let go before the handover.',
  'quiz.conduct.true.left':
    'At the handover no lock is on, the isolator is on and the cock stands as it was found.',

  'quiz.written.nowhere': 'at no moment',
  'quiz.written.no-such-check':
    'there is no such check at that moment; this plant has it {known}. Take the tool or sense, the place and the step as the lists of the plant name them.',
  'quiz.written.not-read-there':
    'with this fault the start does not come so far that this is read; take a moment that it comes to.',
  'quiz.written.cause-not-in-atlas': 'this plant has no such fault in its atlas.',
  'quiz.written.key-not-proved':
    'the readings leave the right cause {percent} % of what it may be; 90 % are wanted. Add a reading that tells it from its neighbours.',
  'quiz.written.distractor-not-ruled-out':
    'the readings leave this cause {percent} % of what it may be; 5 % at most are wanted. Add a reading that rules it out, or take another cause.',
  'quiz.written.no-reading-rules-it-out':
    'this cause is unlikely by all readings together, but no single one rules it out. Add one that does, or take another cause.',
  'quiz.lint.id': '{where}: is neither written/… nor the kind, plant and seed of this item.',
  'quiz.lint.topic-and-skills':
    '{where}: says nothing; an item is about a topic and trains a skill.',
  'quiz.lint.difficulty': '{where}: has to lie between −4 and 4.',
  'quiz.lint.one-key': '{where}: has to point to exactly one answer.',
  'quiz.lint.number-of-options':
    '{where}: three options as a rule, four to eight on a drawing, four to six steps in an order.',
  'quiz.lint.alike-in-kind': '{where}: is another kind of answer than the first one.',
  'quiz.lint.same-meaning': '{where}: means the same as one before it.',
  'quiz.lint.reasons': '{where}: every option has its reason.',
  'quiz.lint.key-not-sure':
    '{where}: the right answer has to have at least nine tenths of the belief.',
  'quiz.lint.distractor-not-ruled-out':
    '{where}: a wrong answer may have one twentieth of the belief at most.',
  'quiz.lint.no-deciding-reading': '{where}: no reading rules this answer out.',
  'quiz.lint.tolerance': '{where}: has to lie between a thousandth and a tenth of the answer.',
  'quiz.lint.unit': '{where}: the answer has no unit.',
  'quiz.lint.working': '{where}: working has two lines or more, from the numbers to the answer.',
  'quiz.lint.mistake-counts-as-right': '{where}: lies within the tolerance, so it counts as right.',
  'quiz.lint.order-not-whole': '{where}: has to name every step once.',
  'quiz.lint.negative-question': '{where}: ask for what is so; a question turned round is misread.',
  'quiz.lint.all-or-none-of-the-above': '{where}: an option may not be about the other options.',
  'quiz.lint.one-question': '{where}: exactly one question, at the end, with its mark.',
  'quiz.lint.option-repeated': '{where}: reads like one before it.',
  'quiz.lint.alike-in-length': '{where}: one is so much longer than another that it stands out.',
  'quiz.lint.reason-says-nothing':
    '{where}: say what rules it in or out; right or wrong alone teaches nothing.',
  'quiz.lint.gap-in-the-words': '{where}: empty, or a place in it was not filled in.',
  'quiz.lint.key-places-uneven':
    '{where}: the right answer stands at one place more often than at another.',
} as const;
