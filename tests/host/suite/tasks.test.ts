import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, open, uriOf } from './files';
import { bytesOf, closeAll } from './seen';
import { until } from './wait';

async function ran(task: vscode.Task): Promise<number | undefined> {
  const ended = new Promise<number | undefined>((resolve) => {
    const listening = vscode.tasks.onDidEndTaskProcess(({ execution, exitCode }) => {
      if (execution.task.name !== task.name) return;
      listening.dispose();
      resolve(exitCode);
    });
  });
  await vscode.tasks.executeTask(task);
  return ended;
}

async function offered(name: RegExp): Promise<vscode.Task> {
  const find = async () => {
    const all = await vscode.tasks.fetchTasks({ type: 'perpend' });
    return all.find((each) => name.test(each.name));
  };
  const task = await until(`a task ${name}`, find, Boolean);
  assert.ok(task);
  return task;
}

const looked = (on?: boolean) =>
  vscode.workspace
    .getConfiguration('perpend')
    .update('findings.folder', on, vscode.ConfigurationTarget.Workspace);

describe('tasks', () => {
  // Else the server tells of files that are not open, and nobody could see whether the task does.
  before(() => looked(false));
  after(async () => {
    await looked(undefined);
    await closeAll();
  });

  it('check all jobs, and what they find stands in the Problems view', async () => {
    const file = uriOf('garden-wall/closed.perp');
    const text = 'perpend 1\n\nuse uk\n\nzzz\n';
    await vscode.workspace.fs.writeFile(file, new TextEncoder().encode(text));
    const found = () => vscode.languages.getDiagnostics(file);
    assert.deepEqual(found(), []);
    assert.equal(await ran(await offered(/check all/)), 1);
    const errors = await until('a problem', found, (all) =>
      all.some(
        ({ range, severity }) =>
          range.start.line === 4 && severity === vscode.DiagnosticSeverity.Error,
      ),
    );
    assert.ok(errors.length);
    await vscode.workspace.fs.delete(file);
  });

  it('write the quote of the job in front', async () => {
    await open(JOB);
    assert.equal(await ran(await offered(/write quote of garden-wall/)), 0);
    const pdf = await bytesOf(uriOf('garden-wall/job-quote.pdf'));
    assert.equal(new TextDecoder('latin1').decode(pdf.slice(0, 5)), '%PDF-');
  });
});
