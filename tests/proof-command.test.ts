import { describe, expect, it } from 'vitest';
import { en } from '../src/words/index.js';
import { inProcess } from './support/run.js';

// Kept borders give away a little of the sum that is proven.
const lighthouse = [
  'chart',
  'fixtures/lighthouse.svg',
  '--rounds',
  '12',
  '--dry-run',
  '--edges',
  '0',
];

describe('chart --proof', () => {
  it('tells programs and people how good the choice is', async () => {
    const { code, out } = await inProcess(...lighthouse, '--json', '--tidy', '0', '--detail', '0');
    expect(code).toBe(0);
    const { choice, difference } = JSON.parse(out);
    expect(choice).toMatchObject({ proven: true, method: 'greedy+swaps+kicks+proof' });
    expect(choice.gap).toBeLessThanOrEqual(1e-6);
    expect(choice.lowerBound).toBeLessThanOrEqual(choice.objective);
    expect(Math.abs(choice.objective - difference.mean)).toBeLessThanOrEqual(1e-4);

    const text = await inProcess(...lighthouse);
    expect(text.out).toContain(
      'choice      no other choice of up to 8 beads is nearer to the picture (proven)\n',
    );
    const one = await inProcess(...lighthouse, '--colours', '1');
    expect(one.out).toContain('choice      no other bead is nearer to the picture (proven)\n');
  });

  it('off is never better and never contradicts the proof; long says the same as normal', async () => {
    const chosen = async (how: string) => {
      const { out } = await inProcess(...lighthouse, '--json', '--proof', how);
      return JSON.parse(out).choice;
    };
    const normal = await chosen('normal');
    const off = await chosen('off');
    expect(off.method).toBe('greedy+swaps');
    expect(off.objective).toBeGreaterThanOrEqual(normal.objective);
    expect(off.lowerBound).toBeLessThanOrEqual(normal.objective);
    expect(await chosen('long')).toEqual(normal);
  });

  it('refuses other words', async () => {
    const { code, err } = await inProcess(...lighthouse, '--proof', 'maybe');
    expect(code).toBe(2);
    expect(err).toContain('off, normal, long');
  });

  it('words a gap so that its figure stays true, and a proof without a figure', () => {
    const said = en.cli.summary.choice;
    expect(said({ most: 8, proven: false, percent: '0.4' })).toBe(
      'no other choice of up to 8 beads can be more than 0.4 % nearer to the picture',
    );
    expect(said({ most: 1, proven: false, percent: '0.1' })).toBe(
      'no other bead can be more than 0.1 % nearer to the picture',
    );
  });
});
