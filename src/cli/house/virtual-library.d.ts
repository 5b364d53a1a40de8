declare module 'virtual:library' {
  const library: ReturnType<typeof import('../library.ts')['loadLibrary']>;
  export default library;
}
