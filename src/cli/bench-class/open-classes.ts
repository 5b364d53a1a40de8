import { type OpenClass, type OpenedClass, openedClassSchema } from '../../classroom/index.ts';
import { KEY } from './processes.ts';

const ASKED: OpenClass = {
  what: { kind: 'start', id: 'healthy-start', title: 'A healthy start', plant: 'dairy' },
  way: 'own copies',
};

export async function openClasses(url: string, count: number): Promise<OpenedClass[]> {
  const opened: OpenedClass[] = [];
  for (let index = 0; index < count; index++) {
    const response = await fetch(`${url}/api/classes`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'x-instructor-key': KEY },
      body: JSON.stringify(ASKED),
    });
    const body: unknown = await response.json();
    if (!response.ok) throw new Error(`no class: ${JSON.stringify(body)}`);
    opened.push(openedClassSchema.parse(body));
  }
  return opened;
}
