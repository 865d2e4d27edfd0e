/**
 * The order in which the protocol wants messages: a start, questions, an end. What comes out of order, or says not where
 * it asks, is refused here, so that nothing behind has to know.
 */
import {
  type Connection,
  ErrorCodes,
  type Message,
  type MessageStrategy,
  type NotificationMessage,
  type RequestMessage,
  ResponseError,
} from 'vscode-languageserver';
import { phrase } from '../../shared/phrase';

type Refusal = readonly [code: number, message: string];

/** What a refused request becomes, so that it is answered like any other. */
const REFUSED = 'perpend/refused';

/** For the connection’s options; `answerRefused` is its other half. */
export function inOrder(): MessageStrategy {
  const order = new Order();
  return {
    handleMessage(message, next) {
      const refused = isAsked(message) ? order.refused(message) : undefined;
      if (!refused) return next(message);
      const params = { why: refused };
      // A notification has no answer: it is left.
      return isRequest(message)
        ? next({ ...message, method: REFUSED, params } as Message)
        : undefined;
    },
  };
}

export function answerRefused(connection: Pick<Connection, 'onRequest'>): void {
  connection.onRequest(REFUSED, ({ why }: { why?: Refusal }) => {
    const [code, message] = why ?? [ErrorCodes.InvalidRequest, REFUSED];
    return new ResponseError(code, message);
  });
}

class Order {
  private state: 'new' | 'begun' | 'ended' = 'new';

  /** Why a message is not let through; nothing where it is. */
  refused(message: RequestMessage | NotificationMessage): Refusal | undefined {
    const { method, params } = message;
    if (method === 'exit') return undefined;
    const early = this.state === 'new' && method !== 'initialize';
    if (early) return [ErrorCodes.ServerNotInitialized, phrase`${method} came before initialize`];
    const late = this.state === 'ended' || (this.state === 'begun' && method === 'initialize');
    if (late) return [ErrorCodes.InvalidRequest, phrase`${method} came too late`];
    if (!isWellFormed(method, params))
      return [ErrorCodes.InvalidParams, phrase`${method} does not say of what it asks`];
    if (method === 'initialize') this.state = 'begun';
    if (method === 'shutdown') this.state = 'ended';
    return undefined;
  }
}

function isAsked(message: Message): message is RequestMessage | NotificationMessage {
  return typeof (message as Partial<RequestMessage>).method === 'string';
}

function isRequest(message: Message): message is RequestMessage {
  const { id } = message as Partial<RequestMessage>;
  return id !== undefined && id !== null;
}

/** Whether it names its file, and where it says a place, that is one. */
function isWellFormed(method: string, params: unknown): boolean {
  if (method === 'initialize') return isRecord(params) && isRecord(params.capabilities);
  if (method.startsWith('perpend/')) return params === undefined || isRecord(params);
  if (method === 'workspace/symbol') return isRecord(params) && typeof params.query === 'string';
  if (!method.startsWith('textDocument/')) return true;
  if (!isRecord(params) || !isRecord(params.textDocument)) return false;
  return typeof params.textDocument.uri === 'string' && hasWhat(method, params);
}

/** What a question about a file cannot be asked without, by its method. */
const NEEDS: Readonly<Record<string, Readonly<Record<string, (value: unknown) => boolean>>>> = {
  hover: { position: isPosition },
  completion: { position: isPosition },
  signatureHelp: { position: isPosition },
  definition: { position: isPosition },
  references: { position: isPosition, context: isRecord },
  documentHighlight: { position: isPosition },
  linkedEditingRange: { position: isPosition },
  prepareRename: { position: isPosition },
  rename: { position: isPosition, newName: isText },
  onTypeFormatting: { position: isPosition, ch: isText },
  selectionRange: { positions: (value) => Array.isArray(value) && value.every(isPosition) },
  rangeFormatting: { range: isRange },
  rangesFormatting: { ranges: (value) => Array.isArray(value) && value.every(isRange) },
  inlayHint: { range: isRange },
  codeAction: {
    range: isRange,
    context: (value) => isRecord(value) && Array.isArray(value.diagnostics),
  },
  'semanticTokens/range': { range: isRange },
  didOpen: { textDocument: (value) => isRecord(value) && isText(value.text) },
  didChange: { contentChanges: (value) => Array.isArray(value) && value.every(isChange) },
};

function hasWhat(method: string, params: Readonly<Record<string, unknown>>): boolean {
  const needs = NEEDS[method.slice('textDocument/'.length)] ?? {};
  return Object.entries(needs).every(([key, fits]) => fits(params[key]));
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function isPosition(value: unknown): boolean {
  return isRecord(value) && typeof value.line === 'number' && typeof value.character === 'number';
}

function isRange(value: unknown): boolean {
  return isRecord(value) && isPosition(value.start) && isPosition(value.end);
}

function isChange(value: unknown): boolean {
  if (!isRecord(value) || !isText(value.text)) return false;
  return value.range === undefined || value.range === null || isRange(value.range);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
