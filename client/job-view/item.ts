/** A part of a job as a row of the tree. */
import {
  l10n,
  MarkdownString,
  Range,
  TreeItemCollapsibleState as State,
  ThemeColor,
  ThemeIcon,
  TreeItem,
  Uri,
} from 'vscode';
import type { Part, PartKind } from '../../shared/protocol/parts';

const ICONS: Readonly<Record<PartKind, string>> = {
  work: 'layers',
  wall: 'table',
  pier: 'symbol-key',
  repair: 'wrench',
  figure: 'symbol-numeric',
  costs: 'package',
  goods: 'package',
  labour: 'watch',
  travel: 'location',
  other: 'add',
  price: 'tag',
  step: 'dash',
  total: 'tag',
  'find-out': 'question',
  unmeasured: 'question',
  range: 'arrow-both',
  stops: 'error',
  error: 'error',
  missing: 'circle-slash',
};

const COLOURS: Partial<Record<PartKind, string>> = {
  stops: 'list.errorForeground',
  error: 'list.errorForeground',
  missing: 'list.warningForeground',
};

/** Open from the beginning: what a job is made of, and what stops its price. */
const OPEN = new Set(['work', 'stops']);

export function itemOf(part: Part): TreeItem {
  const item = new TreeItem(part.label, stateOf(part));
  item.id = part.id;
  item.description = part.text;
  item.iconPath = iconOf(part.kind);
  item.contextValue = contextOf(part);
  item.accessibilityInformation = { label: part.heard };
  if (part.at)
    item.command = {
      command: 'vscode.open',
      title: l10n.t('Show the Line'),
      arguments: [Uri.parse(part.at.uri, true), { selection: selectionOf(part.at) }],
    };
  return item;
}

function stateOf({ id, children }: Part): State {
  if (!children.length) return State.None;
  return OPEN.has(id) ? State.Expanded : State.Collapsed;
}

function iconOf(kind: PartKind): ThemeIcon {
  const colour = COLOURS[kind];
  return new ThemeIcon(ICONS[kind] ?? 'circle-small', colour ? new ThemeColor(colour) : undefined);
}

/** What the menus of the manifest look for. */
export function contextOf({ figure, draws }: Part): string {
  return [figure && 'figure', draws && 'draws'].filter(Boolean).join(' ');
}

function selectionOf({ line, start, end }: NonNullable<Part['at']>): Range {
  return new Range(line, start, line, end);
}

/** @param told how its figure came about, in Markdown without links */
export function tooltipOf(part: Part, told: string | undefined): MarkdownString {
  const text = new MarkdownString();
  text.appendMarkdown('**').appendText(part.label).appendMarkdown('**');
  if (part.text) text.appendText(`: ${part.text}`);
  if (told) text.appendMarkdown(`\n\n${told}`);
  if (part.more) text.appendMarkdown('\n\n').appendText(part.more);
  if (part.lacks?.length) text.appendMarkdown('\n\n').appendText(lacking(part.lacks));
  return text;
}

function lacking(lacks: readonly string[]): string {
  return l10n.t('Not complete. Missing: {0}.', lacks.slice(0, 10).join('; '));
}
