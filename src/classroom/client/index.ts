export type { ClassNow } from './class-now.ts';
export {
  connectInstructor,
  type InstructorClient,
  type InstructorNow,
} from './connect-instructor.ts';
export { connectProjector, type ProjectorClient, type ProjectorNow } from './connect-projector.ts';
export { connectSeat, type SeatClient, type SeatNow } from './connect-seat.ts';
export { type AtTheDoor, joinAtDoor, takeSeat } from './door.ts';
export type { Gone, LinkPhase } from './link.ts';
export type { Readable } from './readable.ts';
export { readTypedCode, type TypedCode } from './typed-code.ts';
export type { SmallShelf, Ways } from './ways.ts';
export type { OpenWire, Wire, WireEnd } from './wire.ts';
export type { Saved, WorkToTell } from './work-telling.ts';
