import type { FastifyReply, FastifyRequest } from 'fastify';
import { loadMessages } from '../../i18n/index.ts';
import { type ClassResult, classCsv, classXapi } from '../../records/class/index.ts';
import type { RecordFile } from '../../records/index.ts';
import { classResultWords } from '../../wording/class/index.ts';
import type { KeptClass } from '../store/types.ts';

/** Results as a table for a spreadsheet. */
export async function sendCsv(
  reply: FastifyReply,
  results: readonly ClassResult[],
): Promise<FastifyReply> {
  return sendFile(reply, classCsv(results, (await words()).columns));
}

/** Results as statements of the Experience API; seats are named under the address that was asked. */
export async function sendXapi(
  request: FastifyRequest,
  reply: FastifyReply,
  kept: KeptClass,
  results: readonly ClassResult[],
): Promise<FastifyReply> {
  const settings = {
    homepage: `${request.protocol}://${request.host}`,
    version: '1.0.3',
    classId: kept.id,
    title: kept.what.title,
    names: true,
  } as const;
  return sendFile(reply, classXapi(results, settings, await words()));
}

async function words() {
  await loadMessages(['class-result', 'quiz', 'quiz-paper']);
  return classResultWords();
}

function sendFile(reply: FastifyReply, { name, type, data }: RecordFile): FastifyReply {
  return reply
    .header('content-disposition', `attachment; filename="${name}"`)
    .type(type)
    .send(typeof data === 'string' ? data : Buffer.from(data));
}
