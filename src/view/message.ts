export type MessageParams = Readonly<Record<string, string | number>>;

/** The sentence of a code in the reader's language; sentences live in `i18n`. */
export type Message = (code: string, params?: MessageParams) => string;

/** A value of a channel as the reader likes it, with its unit; the channel says what kind it is. */
export type Reading = (value: number, unit: string, channel?: string) => string;
