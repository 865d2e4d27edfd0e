/** The engine's values as the plain data that --json prints. Lines and columns count from one, as on screen. */
import type { Finding } from '../../../shared/finding';
import type { Place } from '../../../shared/span';
import type { CautionView, FigureView } from '../../../shared/views';
import type { Session } from '../session';
import type { Step } from '../workings';

export function placeJson(place: Place, session: Session) {
  return {
    file: session.shown(place.file),
    line: place.line + 1,
    column: place.start + 1,
    endColumn: place.end + 1,
  };
}

export function findingJson(finding: Finding, session: Session) {
  return {
    code: finding.code,
    severity: finding.severity,
    message: finding.message,
    place: placeJson(finding.place, session),
    related: finding.related.map((r) => ({
      message: r.message,
      place: placeJson(r.place, session),
    })),
    ways: finding.ways.map((way) => ({
      title: way.title,
      preferred: way.preferred === true,
      edits: way.edits.map((e) => ({ place: placeJson(e.place, session), text: e.text })),
    })),
  };
}

export function cautionJson(caution: CautionView, session: Session) {
  return {
    ...caution,
    here: caution.here.map((each) => ({
      ...each,
      places: each.places.map((place) => placeJson(place, session)),
    })),
  };
}

export function figureJson(figure: FigureView, working: number) {
  const { id, label, value, unit, text, complete, missing } = figure;
  return { id, label, value, unit, text, complete, missing, working };
}

/** What is not there is left out, never null. */
export function stepJson(step: Step, numberOf: (step: Step) => number, session: Session) {
  const { view, term } = step;
  return {
    label: view.label,
    value: term.value.toFixed(),
    unit: term.unit,
    text: view.result,
    sum: view.sum,
    note: view.note,
    place: view.place && placeJson(view.place, session),
    line: view.line,
    detail: step.detail.length ? step.detail : undefined,
    missing: view.missing,
    parts: step.parts.map(numberOf),
  };
}
