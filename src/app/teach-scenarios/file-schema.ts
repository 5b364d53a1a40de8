/** The part of JSON Schema that the files of the library are described by. */
export interface FileSchema {
  readonly type?: string;
  readonly description?: string;
  readonly unit?: string;
  readonly default?: unknown;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly items?: FileSchema;
  readonly properties?: Readonly<Record<string, FileSchema>>;
  readonly required?: readonly string[];
  readonly oneOf?: readonly FileSchema[];
  readonly anyOf?: readonly FileSchema[];
}
