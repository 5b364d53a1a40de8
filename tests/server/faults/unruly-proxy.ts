import { createServer, connect as reach, type Server, type Socket } from 'node:net';
import { createRandom, nextUniform } from '../../../src/numeric/index.ts';

/** Stands between pages and a server: holds back what is said, and cuts lines, by chance from a seed. */
export interface UnrulyProxy {
  readonly url: string;
  readonly cuts: () => number;
  /** From now on it only passes on. */
  calm(): void;
  close(): Promise<void>;
}

const MOST_HELD_BACK_MS = 120;
const CUT_ONE_IN = 60;

export async function startUnrulyProxy(port: number, seed: number): Promise<UnrulyProxy> {
  const random = createRandom(seed);
  const chance = (): number => nextUniform(random);
  const lines = new Set<Socket>();
  let cuts = 0;
  let isCalm = false;
  const server: Server = createServer((page) => {
    const far = reach({ port, host: '127.0.0.1' });
    const cut = (): void => {
      for (const end of [page, far]) {
        end.destroy();
        lines.delete(end);
      }
    };
    passOn(page, far, cut);
    passOn(far, page, cut);
    for (const end of [page, far]) {
      lines.add(end);
      end.on('error', cut);
      end.on('close', cut);
    }
  });

  /** In its order, as the lines of the world do; the two ways wait apart from each other. */
  function passOn(from: Socket, to: Socket, cut: () => void): void {
    let last: Promise<void> = Promise.resolve();
    from.on('data', (bytes) => {
      last = last.then(async () => {
        if (!isCalm) {
          // Some of it goes through before the line breaks: nobody knows what was heard.
          if (chance() < 1 / CUT_ONE_IN) {
            to.write(bytes.subarray(0, Math.floor(chance() * bytes.length)));
            cuts++;
            cut();
            return;
          }
          await new Promise((resolve) => setTimeout(resolve, chance() * MOST_HELD_BACK_MS));
        }
        if (!to.destroyed) to.write(bytes);
      });
    });
  }

  await new Promise<void>((resolve) => server.listen({ port: 0, host: '127.0.0.1' }, resolve));
  const address = server.address();
  const own = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${own}`,
    cuts: () => cuts,
    calm() {
      isCalm = true;
    },
    close() {
      for (const line of lines) line.destroy();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}
