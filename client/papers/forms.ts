/** What a paper, a page or a drawing can be saved as, in a reader’s words. */
import { l10n } from 'vscode';
import type { Form } from '../../shared/protocol/pages';

export interface FormWords {
  readonly label: string;
  readonly about: string;
}

export function formWords(form: Form): FormWords {
  const words: Readonly<Record<Form, string>> = {
    pdf: l10n.t('to send or to print'),
    html: l10n.t('a page for a browser, which prints it too'),
    md: l10n.t('plain text with headings and tables'),
    csv: l10n.t('a table for any spreadsheet'),
    xlsx: l10n.t('a workbook for a spreadsheet'),
    xml: l10n.t('an electronic document, for programs'),
    svg: l10n.t('a drawing to scale, for a browser or a page'),
    dxf: l10n.t('a drawing at full size, for drawing programs'),
    json: l10n.t('all of it as data, for programs'),
  };
  return { label: form === 'md' ? 'Markdown' : form.toUpperCase(), about: words[form] };
}
