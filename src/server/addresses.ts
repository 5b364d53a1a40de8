import { networkInterfaces } from 'node:os';

/** The addresses at which others on the same network find this machine. */
export function lanAddresses(interfaces = networkInterfaces()): string[] {
  return Object.values(interfaces)
    .flatMap((addresses) => addresses ?? [])
    .filter((address) => address.family === 'IPv4' && !address.internal)
    .map((address) => address.address);
}
