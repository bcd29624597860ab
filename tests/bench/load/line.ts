import { connect, type Socket } from 'node:net';

/**
 * One connection that is kept, one request at a time. Written straight to the socket: a client of the usual kind would
 * take as much of the processor as the server that is measured.
 */
export class Line {
  private heard = '';
  private answered?: (reply: string) => void;
  private broken?: (reason: Error) => void;

  private constructor(private readonly socket: Socket) {
    socket.setNoDelay(true).setEncoding('latin1');
    socket.on('data', (text: string) => this.hear(text));
    socket.on('error', (reason) => this.broken?.(reason));
    socket.on('close', () => this.broken?.(new Error('The server hung up')));
  }

  static async to(url: string): Promise<Line> {
    const { hostname, port } = new URL(url);
    const socket = connect(Number(port), hostname);
    await new Promise((open, fail) => socket.once('connect', open).once('error', fail));
    return new Line(socket);
  }

  /** Sends a whole request and gives the body of the answer. Throws when it is not 200. */
  async send(request: string): Promise<string> {
    const reply = await new Promise<string>((answered, broken) => {
      this.answered = answered;
      this.broken = broken;
      this.socket.write(request, 'latin1');
    });
    if (reply.startsWith('HTTP/1.1 200')) return reply.slice(bodyAt(reply));
    throw new Error(`${request.slice(0, request.indexOf('\r\n'))} was answered with ${reply}`);
  }

  hangUp(): void {
    this.broken = undefined;
    this.socket.destroy();
  }

  private hear(text: string): void {
    this.heard += text;
    const body = bodyAt(this.heard);
    if (body < 4) return;
    const length = /\r\ncontent-length: (\d+)/i.exec(this.heard)?.[1];
    if (this.heard.length < body + Number(length ?? NaN)) return;
    const reply = this.heard;
    this.heard = '';
    this.answered?.(reply);
  }
}

const bodyAt = (reply: string): number => reply.indexOf('\r\n\r\n') + 4;
