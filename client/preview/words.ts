/** What the page of the preview says, in the editor’s language. */
import { l10n } from 'vscode';
import type { PageWords } from '../../shared/protocol/preview-words';

export function pageWords(): PageWords {
  return { ...controls(), ...spoken(), ...styles() };
}

function controls() {
  return {
    bar: l10n.t('Preview'),
    show: l10n.t('What is shown'),
    work: l10n.t('Piece of work'),
    zoomIn: l10n.t('Zoom in'),
    zoomOut: l10n.t('Zoom out'),
    fit: l10n.t('Fit into the window'),
    follow: l10n.t('Follow the cursor'),
    unfollow: l10n.t('Stop following the cursor'),
    paperLook: l10n.t('Show as a sheet of paper'),
    print: l10n.t('Print'),
    board: l10n.t('Drawing'),
    paper: l10n.t('Paper'),
    key: l10n.t('Key to the drawing'),
    lines: l10n.t('Lines that it comes from'),
    notes: l10n.t('Notes'),
    waiting: l10n.t('Being drawn …'),
    helpBoard: l10n.t(
      'Arrow keys go from brick to brick and from course to course, and on to openings and dimensions. Enter goes to the line in the text, Space shows it. Shift with an arrow key moves the drawing, plus and minus zoom, 0 fits it.',
    ),
    helpPaper: l10n.t(
      'The up and down keys go through what comes from a line of the text; Enter goes there. Plus and minus zoom.',
    ),
  };
}

function spoken() {
  return {
    course: l10n.t('course {0}'),
    piece: l10n.t('brick {0} of {1}'),
    row: l10n.t('row {0}'),
    ofMany: l10n.t('{0} of {1}'),
    millimetres: l10n.t('{0} mm'),
    line: l10n.t('{0}, line {1}'),
    lineIn: l10n.t('{0}, line {1} of another file'),
    noLine: l10n.t('from no line of this file'),
  };
}

function styles() {
  return {
    stretcher: l10n.t('stretcher'),
    header: l10n.t('header'),
    half: l10n.t('half bat'),
    'three-quarter': l10n.t('three-quarter bat'),
    closer: l10n.t('queen closer'),
    cut: l10n.t('cut brick'),
    'on-edge': l10n.t('brick on edge'),
    brickwork: l10n.t('brickwork'),
    opening: l10n.t('opening'),
    pier: l10n.t('pier'),
    cap: l10n.t('cap'),
    core: l10n.t('core'),
    precast: l10n.t('precast coping'),
    lintel: l10n.t('lintel'),
    soldier: l10n.t('soldier'),
    voussoir: l10n.t('brick of an arch'),
    mortar: l10n.t('mortar'),
    tile: l10n.t('tile'),
    block: l10n.t('block'),
    band: l10n.t('band in another brick'),
    projecting: l10n.t('standing out'),
    reused: l10n.t('reused brick'),
    'new-piece': l10n.t('new piece'),
    'gone-piece': l10n.t('piece that is gone'),
    outline: l10n.t('outline'),
  };
}
