import type { Message } from '../message.ts';

export interface ConductFinding {
  readonly rule: `SC-${number}`;
  readonly t: number;
  /** What was done. */
  readonly what: Message;
  /** The state of the plant that makes it so. */
  readonly state: Message;
  readonly severity: 'unsafe' | 'careless';
}

/** `code` heads both sentences: `….what` and `….state`. */
export function finding(
  rule: ConductFinding['rule'],
  t: number,
  severity: ConductFinding['severity'],
  code: string,
  params: NonNullable<Message['params']> = {},
): ConductFinding {
  return {
    rule,
    t,
    severity,
    what: { code: `conduct.${code}.what`, params },
    state: { code: `conduct.${code}.state`, params },
  };
}
