/** Messages on standard output, each in one write: its length and itself apart would wake the reader twice. */
import {
  AbstractMessageWriter,
  type Message,
  type MessageWriter,
} from 'vscode-languageserver/node';

export class OneWrite extends AbstractMessageWriter implements MessageWriter {
  private faults = 0;

  constructor(private readonly out: NodeJS.WritableStream) {
    super();
    out.on('error', (error: Error) => this.fireError(error));
    out.on('close', () => this.fireClose());
  }

  /** Done when it is handed over, in the order of asking. */
  write(message: Message): Promise<void> {
    return new Promise((done, failed) => {
      const text = JSON.stringify(message);
      const framed = `Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`;
      this.out.write(framed, 'utf8', (error) => {
        if (!error) return done();
        this.fireError(error, message, ++this.faults);
        failed(error);
      });
    });
  }

  end(): void {
    this.out.end();
  }
}
