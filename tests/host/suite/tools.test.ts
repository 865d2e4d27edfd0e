import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, open } from './files';
import { closeAll } from './seen';
import { until } from './wait';

async function invoke(name: string, input: object): Promise<string> {
  const { token } = new vscode.CancellationTokenSource();
  const options = { input, toolInvocationToken: undefined };
  const { content } = await vscode.lm.invokeTool(name, options, token);
  return content
    .map((part) => (part instanceof vscode.LanguageModelTextPart ? part.value : ''))
    .join('');
}

describe('tools for language models', () => {
  before(async () => {
    await open(JOB);
    const named = () => vscode.lm.tools.map(({ name }) => name);
    await until('the tools', named, (all) => all.includes('perpend_price_job'));
  });
  after(closeAll);

  it('price a job, with units', async () => {
    const text = await invoke('perpend_price_job', { file: JOB });
    assert.match(text, /£4,050\.00/);
    assert.match(text, /1,050\sbricks/);
  });

  it('check a job', async () => {
    assert.match(await invoke('perpend_check_job', { file: JOB }), /warning/);
  });

  it('explain a figure by its id', async () => {
    const text = await invoke('perpend_explain_figure', { file: JOB, figure: 'north.bricks' });
    assert.match(text, /1,050/);
  });

  it('tell what there is where a file is not there', async () => {
    await assert.rejects(
      invoke('perpend_price_job', { file: 'nothing.perp' }),
      /nothing\.perp.*garden-wall/s,
    );
  });
});
