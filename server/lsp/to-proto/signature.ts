/** What a line takes. */
import { MarkupKind, type SignatureHelp, type SignatureInformation } from 'vscode-languageserver';
import type { Signature, Signatures } from '../../engine/ide/signature';

export interface SignatureClient {
  /** Takes a part by where it stands in the label. */
  readonly labelOffsets: boolean;
  /** Knows that no part may be active. */
  readonly noActivePart: boolean;
}

export function signatureHelp(found: Signatures, client: SignatureClient): SignatureHelp {
  const { active, signatures } = found;
  return {
    signatures: signatures.map((signature) => information(signature, client)),
    activeSignature: active,
    activeParameter: signatures[active]!.active ?? 0,
  };
}

function information(signature: Signature, client: SignatureClient): SignatureInformation {
  const { label, text, parts, active } = signature;
  return {
    label,
    documentation: { kind: MarkupKind.Markdown, value: text },
    parameters: parts.map(({ start, end, text: told }) => ({
      label: client.labelOffsets ? [start, end] : label.slice(start, end),
      documentation: { kind: MarkupKind.Markdown, value: told },
    })),
    activeParameter: active ?? (client.noActivePart ? null : parts.length),
  };
}
