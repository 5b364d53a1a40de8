/** A code with parameters, as the catalogue takes it; its sentence stands in i18n. */
export interface Message {
  readonly code: string;
  readonly params?: Readonly<Record<string, MessageValue>>;
}
export type MessageValue = string | number | Message | readonly string[];
