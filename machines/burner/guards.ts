import { causeStands, RECYCLABLE, rankOf, SELF_CLEARING } from './causes.ts';
import type { BurnerContext } from './context.ts';
import type { BurnerEvent } from './events.ts';
import { INPUT_BITS, type ReadInput } from './inputs.ts';
import type { InputName } from './terminals.ts';
import { WATCHES } from './watches.ts';

interface Given {
  readonly context: BurnerContext;
  readonly event: BurnerEvent;
}
type Test = (given: Given) => boolean;

/** Every condition of the charts, by name. All that they know of the inputs comes through `read`. */
export function guardsFor(read: ReadInput) {
  const made = (input: InputName): Test => {
    const bit = INPUT_BITS[input];
    return ({ context }) => read(context.word, bit);
  };
  const open = (input: InputName): Test => {
    const bit = INPUT_BITS[input];
    return ({ context }) => !read(context.word, bit);
  };
  const all =
    (...tests: readonly Test[]): Test =>
    (given) => {
      for (const test of tests) if (!test(given)) return false;
      return true;
    };
  const either =
    (...tests: readonly Test[]): Test =>
    (given) => {
      for (const test of tests) if (test(given)) return true;
      return false;
    };
  const not =
    (test: Test): Test =>
    (given) =>
      !test(given);

  const fixedSpeed: Test = ({ context }) => context.variant.fan === 'fixed speed';
  const proofOfClosure: Test = ({ context }) => context.variant.proofOfClosure;
  const lostProofLocksOut: Test = ({ context }) => context.timings.lostProofInPurge === 'lockout';
  const gasWatched: Test = ({ context }) => WATCHES[context.watch].gasPressure;
  const keepsToLightOff: Test = ({ context }) => WATCHES[context.watch].keepsTo === 'light-off';
  const keepsToCurve: Test = ({ context }) => WATCHES[context.watch].keepsTo === 'curve';

  const valvesClosed = all(made('upstreamValveClosed'), made('downstreamValveClosed'));
  const atRestProved = all(
    made('safetyRelayFeedback'),
    open('airProved'),
    open('flame'),
    either(not(proofOfClosure), valvesClosed),
    made('gasPressureAboveLow'),
    made('gasPressureBelowHigh'),
  );
  const provingDue: Test = ({ context }) =>
    context.variant.valveProving === 'before start' ||
    (context.variant.valveProving === 'after run-down' && !context.valvesProved);
  const provingDueAfterRunDown = all(
    ({ context }) => context.variant.valveProving === 'after run-down' && !context.valvesProved,
    made('supplyInBand'),
    made('waterAboveFirst'),
  );
  const purgeSpeed = either(fixedSpeed, made('fanAtPurgeSpeed'));
  const purgeProved = all(made('damperAtPurge'), purgeSpeed, made('airProved'));
  const atLightOff = all(
    made('damperAtLightOff'),
    made('fuelValveAtLightOff'),
    either(fixedSpeed, made('fanAtLightOffSpeed')),
  );
  const lightOffProved = all(atLightOff, made('airProved'));
  const lightOffLeft = all(keepsToLightOff, not(atLightOff));
  const positionOff = either(lightOffLeft, all(keepsToCurve, open('positionsOnCurve')));
  const speedOff = all(keepsToCurve, not(fixedSpeed), open('speedOnCurve'));

  return {
    lockoutSaved: ({ context }: Given) => context.cause !== null,

    heatWanted: made('callForHeat'),
    heatNotWanted: open('callForHeat'),
    startAllowed: all(
      made('callForHeat'),
      made('emergencyStopClear'),
      made('supplyInBand'),
      made('controlFuseMade'),
      made('waterAboveFirst'),
      made('waterAboveSecond'),
      made('highLimitMade'),
      made('furnacePressureInBand'),
    ),

    relayDroppedOut: open('safetyRelayFeedback'),
    relayPickedUp: made('safetyRelayFeedback'),
    readyToProveValves: all(provingDue, atRestProved),
    readyToPurge: all(not(provingDue), atRestProved),
    airStillProved: made('airProved'),
    valvesNotProvedClosed: all(proofOfClosure, not(valvesClosed)),
    gasPressureLow: open('gasPressureAboveLow'),
    gasPressureHigh: open('gasPressureBelowHigh'),

    interspaceEmpty: made('interspaceEmpty'),
    interspaceNotEmpty: open('interspaceEmpty'),
    interspaceFull: made('interspaceFull'),
    interspaceNotFull: open('interspaceFull'),

    purgeProved,
    purgeProofLost: not(purgeProved),
    purgePositionLost: open('damperAtPurge'),
    purgeSpeedLost: not(purgeSpeed),
    purgePositionLostForGood: all(lostProofLocksOut, open('damperAtPurge')),
    purgeSpeedLostForGood: all(lostProofLocksOut, not(purgeSpeed)),
    purgeAirLostForGood: all(lostProofLocksOut, open('airProved')),
    purgeComplete: all(purgeProved, made('airChangesCounted')),

    lightOffProved,
    lightOffProofLost: not(lightOffProved),
    pilotFitted: ({ context }: Given) => context.variant.ignition !== 'direct spark',
    flameSeen: made('flame'),
    flameNotSeen: open('flame'),
    warmUpSatisfied: made('warmUpSatisfied'),

    valvesProvedClosed: all(proofOfClosure, valvesClosed),
    provingDueAfterRunDown,
    notClosedInTime: all(proofOfClosure, made('supplyInBand'), not(valvesClosed)),

    emergencyStopPressed: open('emergencyStopClear'),
    waterVeryLow: open('waterAboveSecond'),
    highLimitOpen: open('highLimitMade'),
    furnacePressureHigh: open('furnacePressureInBand'),
    gasPressureLowWhenWatched: all(gasWatched, open('gasPressureAboveLow')),
    gasPressureHighWhenWatched: all(gasWatched, open('gasPressureBelowHigh')),
    airflowLost: all(({ context }) => WATCHES[context.watch].airLost !== null, open('airProved')),
    waterLow: open('waterAboveFirst'),
    waterBack: made('waterAboveFirst'),

    supplyOut: open('supplyInBand'),
    supplyBack: made('supplyInBand'),
    fuseOpen: open('controlFuseMade'),
    relayLost: all(
      ({ context }) => WATCHES[context.watch].safetyRelay,
      open('safetyRelayFeedback'),
    ),

    lightOffLeft,
    positionOff,
    positionKept: not(positionOff),
    speedOff,
    speedKept: not(speedOff),

    resetPressed: made('resetPressed'),
    resetReleased: open('resetPressed'),
    resetReleasedAndAccepted: all(
      open('resetPressed'),
      made('supplyInBand'),
      ({ context }) =>
        context.cause !== null &&
        !causeStands(context.cause, context.variant, (input) =>
          read(context.word, INPUT_BITS[input]),
        ),
    ),

    tripOutranksCause: ({ context, event }: Given) =>
      event.type === 'trip' &&
      context.cause !== null &&
      !SELF_CLEARING.has(event.cause) &&
      rankOf(event.cause) < rankOf(context.cause),
    tripClearsItself: ({ event }: Given) => event.type === 'trip' && SELF_CLEARING.has(event.cause),
    recycleAllowed: ({ context, event }: Given) =>
      event.type === 'trip' &&
      RECYCLABLE.has(event.cause) &&
      context.recycles < context.timings.recyclesAllowed,
  };
}
