/** What the instructors of this server have written themselves, as a class can be about it. */
import { z } from 'zod';
import type { ClassWhat } from '../../../machines/class/index.ts';
import { listServer, type ServerFile } from '../teach-scenarios/server-library.ts';
import type { ListedKind } from './class-offers.ts';
import { withInstructorKey } from './instructor-key.ts';

export interface OwnExercise {
  readonly kind: ListedKind;
  readonly id: string;
  readonly title: string;
  readonly plant: string;
}

/** None where the server has no library, or does not let one in. */
export async function listOwnExercises(): Promise<readonly OwnExercise[]> {
  const listed = await listServer();
  if (!listed.ok) return [];
  return listed.value.files.flatMap(({ removed, kind, id, title, plant }: ServerFile) =>
    removed || kind === 'quiz' ? [] : [{ kind, id, title, plant }],
  );
}

/** The data are a small library with that one thing in it, as a run is opened with. */
const fileSchema = z.object({ data: z.record(z.string(), z.unknown()).nullable() });

/** Null where it cannot be had, or where this version of the program no longer takes it. */
export async function whatOfOwn({
  kind,
  id,
  title,
  plant,
}: OwnExercise): Promise<ClassWhat | null> {
  try {
    const place = `api/library/${kind}/${encodeURIComponent(id)}`;
    const answer = await fetch(place, { headers: withInstructorKey(), cache: 'no-store' });
    const read = fileSchema.safeParse(await answer.json());
    if (!answer.ok || !read.success || read.data.data === null) return null;
    return { kind, id, title, plant, given: read.data.data };
  } catch {
    return null;
  }
}
