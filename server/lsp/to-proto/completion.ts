/** What can be written at a place. */
import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  InsertTextFormat,
  InsertTextMode,
  type MarkupContent,
  MarkupKind,
  type TextEdit,
} from 'vscode-languageserver';
import type { Span } from '../../../shared/span';
import type * as ide from '../../engine/ide/types';
import { range } from './places';

/** What the client makes of a list of words. */
export interface CompletionClient {
  readonly fillsSnippets: boolean;
  /** What it takes once for the whole list. */
  readonly listDefaults: ReadonlySet<string>;
  /** It knows what to replace where the cursor stands within a word. */
  readonly replacesWords: boolean;
  readonly labelDetails: boolean;
  readonly commits: boolean;
  /** Puts what comes in as deep as the line that it is put into, if it is told so. */
  readonly adjustsIndents: boolean;
  /** Its own commands that we may name. */
  readonly commands: ReadonlySet<string>;
}

/** What the item is given back with when a reader looks at it: the place where its word begins, in our columns. */
export interface ItemData {
  readonly uri: string;
  readonly line: number;
  readonly column: number;
  readonly kind?: ide.CompletionKind;
}

export const ITEM_KINDS: Readonly<Record<ide.CompletionKind, CompletionItemKind>> = {
  heading: CompletionItemKind.Keyword,
  block: CompletionItemKind.Snippet,
  key: CompletionItemKind.Property,
  name: CompletionItemKind.Reference,
  unit: CompletionItemKind.Unit,
  choice: CompletionItemKind.EnumMember,
  word: CompletionItemKind.Text,
  file: CompletionItemKind.File,
};

export function markdown(value: string): MarkupContent {
  return { kind: MarkupKind.Markdown, value };
}

/** In the engine’s order. Snippets only for a client that can fill them in. */
export function completionList(
  found: ide.Completions | undefined,
  uri: string,
  client: CompletionClient,
): CompletionList {
  if (!found) return { isIncomplete: false, items: [] };
  const items = found.items.filter((item) => client.fillsSnippets || !item.isSnippet);
  const { span } = found;
  const data: ItemData = { uri, line: span.line, column: span.start };
  const places = placesOf(found, client);
  const defaults = defaultsOf(places, data, client);
  return {
    isIncomplete: false,
    ...(Object.keys(defaults).length ? { itemDefaults: defaults } : {}),
    items: items.map((item, i) => ({
      ...itemOf(item, i, client),
      ...('editRange' in defaults
        ? { textEditText: item.insert }
        : { textEdit: editOf(places, item.insert) }),
      ...('data' in defaults ? {} : { data: { ...data, kind: item.kind } }),
    })),
  };
}

interface Places {
  readonly insert: Span;
  readonly replace?: Span;
}

function placesOf({ span, wordEnd }: ide.Completions, client: CompletionClient): Places {
  return { insert: span, replace: client.replacesWords ? { ...span, end: wordEnd } : undefined };
}

function defaultsOf({ insert, replace }: Places, data: ItemData, client: CompletionClient) {
  const { listDefaults } = client;
  const editRange = replace ? { insert: range(insert), replace: range(replace) } : range(insert);
  return {
    ...(listDefaults.has('editRange') ? { editRange } : {}),
    ...(listDefaults.has('data') ? { data } : {}),
  };
}

function editOf({ insert, replace }: Places, newText: string): CompletionItem['textEdit'] {
  const edit: TextEdit = { range: range(insert), newText };
  return replace ? { newText, insert: range(insert), replace: range(replace) } : edit;
}

/** What VS Code and its kin call it: what may follow is offered at once. */
const SUGGEST = 'editor.action.triggerSuggest';

function itemOf(item: ide.Completion, order: number, client: CompletionClient): CompletionItem {
  const { label, kind, detail, from, commits, more, isSnippet } = item;
  const said = detail !== undefined || from !== undefined;
  const details = client.labelDetails
    ? { labelDetails: labelDetails(item) }
    : { detail: detail ?? from };
  return {
    label,
    kind: ITEM_KINDS[kind],
    ...(said ? details : {}),
    sortText: String(order).padStart(4, '0'),
    filterText: label,
    ...(isSnippet ? { insertTextFormat: InsertTextFormat.Snippet } : {}),
    ...(isSnippet && client.adjustsIndents
      ? { insertTextMode: InsertTextMode.adjustIndentation }
      : {}),
    ...(client.commits && commits ? { commitCharacters: [...commits] } : {}),
    ...(more && client.commands.has(SUGGEST) ? { command: { title: '', command: SUGGEST } } : {}),
  };
}

/** A title stands close behind a name, and its file at the end of the row; all else at the end. */
function labelDetails({ kind, detail, from }: ide.Completion): CompletionItem['labelDetails'] {
  if (kind === 'name') return { detail: detail && ` ${detail}`, description: from };
  return { description: detail };
}
