/**
 * The least that a broadcast can cost: one server of Socket.IO that gives what one connection
 * says to all, and does nothing else. Same transport, same settings.
 */
import { createServer } from 'node:http';
import { Server } from 'socket.io';

const http = createServer((_request, response) => {
  const { user, system } = process.cpuUsage();
  const { heapUsed, external } = process.memoryUsage();
  response.end(
    `flamewright_heap_bytes ${heapUsed + external}\nflamewright_cpu_seconds ${(user + system) / 1e6}\n`,
  );
});
const io = new Server(http, {
  path: '/class',
  transports: ['websocket'],
  allowUpgrades: false,
  serveClient: false,
  perMessageDeflate: false,
  httpCompression: false,
});
io.on('connection', (socket) => {
  void socket.join('everyone');
  socket.on('say', (message: { readonly entry: object }, ack: (answer: object) => void) => {
    ack({ ok: true });
    io.to('everyone').emit('entry', message.entry);
  });
});
http.listen({ port: 0, host: '127.0.0.1' }, () => {
  const address = http.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  process.stdout.write(`${JSON.stringify({ port })}\n`);
});
