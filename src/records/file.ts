/** Something to save, made wholly in memory. */
export interface RecordFile {
  readonly name: string;
  /** Media type. */
  readonly type: string;
  readonly data: string | Uint8Array;
}
