/** What the line that is being written takes. */
import { SignatureHelpTriggerKind } from 'vscode-languageserver';
import { signaturesAt } from '../../engine/ide/signature';
import * as from from '../from-proto';
import type { Parts } from '../parts';
import * as to from '../to-proto';

export function registerSignature({ connection, answers, client, session }: Parts): void {
  connection.onSignatureHelp(
    answers.quick((params, file) => {
      const found = signaturesAt(session().job(file), from.position(params.position));
      const { triggerKind, isRetrigger } = params.context ?? {};
      // A space within a text asks for nothing.
      const unasked = triggerKind === SignatureHelpTriggerKind.TriggerCharacter && !isRetrigger;
      if (!found || (found.inText && unasked)) return null;
      return to.signatureHelp(found, client());
    }),
  );
}
