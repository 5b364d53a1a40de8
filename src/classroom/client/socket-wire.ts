import { io } from 'socket.io-client';
import type { OpenWire } from './wire.ts';

const CONNECT_WITHIN_MS = 5000;

/** A wire over Socket.IO. It connects once; trying again is the business of who holds it. */
export const openSocketWire: OpenWire = (url, hello, end) => {
  const options = {
    path: '/class',
    transports: ['websocket'],
    reconnection: false,
    forceNew: true,
    timeout: CONNECT_WITHIN_MS,
    auth: hello,
  };
  const socket = url === undefined ? io(options) : io(url, options);
  socket.on('connect', end.opened);
  socket.on('connect_error', (error: Error) => {
    socket.disconnect();
    end.closed(error.message);
  });
  socket.on('disconnect', () => {
    socket.disconnect();
    end.closed('');
  });
  socket.onAny((event: string, data: unknown) => end.message(event, data));
  return {
    ask: (event, data, withinMs) => socket.timeout(withinMs).emitWithAck(event, data),
    tell(event, data) {
      // Not as volatile: that drops the last of them whenever anything else is on its way.
      if (socket.connected) socket.emit(event, data);
    },
    close() {
      socket.removeAllListeners();
      socket.offAny();
      socket.disconnect();
    },
  };
};
