/** What the database's own thread is told and tells. */
import type { Row, Statement, StoreTrouble } from '../types.ts';

/** Given to the thread when it starts. */
export interface ThreadStart {
  readonly folder: string;
  /** Bytes of the disk that writing leaves free. */
  readonly spareBytes: number;
}

export type ToThread =
  | {
      readonly type: 'do';
      readonly job: number;
      readonly statements: readonly Statement[];
      /** One statement is a transaction by itself. */
    }
  | { readonly type: 'close' };

export interface ThreadError {
  readonly trouble: StoreTrouble;
  readonly code: string;
  readonly message: string;
}

export type FromThread =
  | { readonly type: 'open' }
  | { readonly type: 'not opened'; readonly error: ThreadError }
  | { readonly type: 'done'; readonly job: number; readonly rows: readonly (readonly Row[])[] }
  | {
      readonly type: 'failed';
      readonly job: number;
      readonly error: ThreadError;
      /** The engine has broken off and must be started anew. */
      readonly broken: boolean;
    }
  | { readonly type: 'closed' };
