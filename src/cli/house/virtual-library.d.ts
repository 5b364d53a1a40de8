declare module 'virtual:library' {
  const library: ReturnType<typeof import('../library.ts')['loadLibrary']>;
  export default library;
}
declare module 'virtual:library-text' {
  /** By `folder/name.yaml`. */
  const texts: Readonly<Record<string, string>>;
  export default texts;
}
