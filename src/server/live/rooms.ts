/** Who is told what: names of Socket.IO rooms. */
export const everyoneOf = (id: string): string => `class ${id}`;
export const instructorsOf = (id: string): string => `lead ${id}`;
export const projectorsOf = (id: string): string => `screen ${id}`;
export const watchersOf = (id: string, seat: number): string => `watch ${id} ${seat}`;
