export { lanAddresses } from './addresses.ts';
export { type ListenOptions, listenOnFreePort, parsePort } from './listen.ts';
export { createPageServer, type PageServerOptions } from './page-server.ts';
export { readSettings, type ServerSettings, type SettingsRead } from './settings.ts';
export { type RunningServer, type StartOptions, startServer } from './start-server.ts';
export { stopOnSignal } from './stop-on-signal.ts';
