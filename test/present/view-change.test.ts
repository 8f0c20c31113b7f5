import { beforeAll, describe, expect, it } from 'vitest';
import { GOLDEN, goldenText } from '../../scripts/golden.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { toViewChange, withViewChange } from '../../src/present/workspace/view-change.ts';
import { toWorkspaceView, type WorkspaceView } from '../../src/present/workspace/workspace-view.ts';

const views: WorkspaceView[] = [];
const assessments: Assessment[] = [];

beforeAll(async () => {
  for (const name of GOLDEN) {
    const assessment = JSON.parse(await goldenText(name)) as Assessment;
    assessments.push(assessment);
    views.push(toWorkspaceView(assessment));
  }
});

const byId = (view: WorkspaceView) => ({ ...view, rows: view.rows.toSorted((a, b) => (a.id < b.id ? -1 : 1)) });

describe('a page that is told what changed', () => {
  it('draws what it would draw anew, from any unit to any other', () => {
    for (const before of views)
      for (const after of views) {
        const change = JSON.parse(JSON.stringify(toViewChange(before, after))) as ReturnType<typeof toViewChange>;
        expect(byId(withViewChange(before, change))).toEqual(byId(after));
      }
  });

  it('draws all of it where nothing of what it has is known', () => {
    for (const view of views) {
      const blank = { ...view, rows: [], chapters: [], tally: [], groups: [], next: [] };
      expect(byId(withViewChange(blank, toViewChange(blank, view)))).toEqual(byId(view));
    }
  });

  it('is not told again of a figure that stayed', () => {
    const [view] = views.filter(({ chapters }) => chapters.some(({ figures }) => figures.length > 1));
    const load = view!.chapters.find(({ figures }) => figures.length > 1)!;
    const [first, ...others] = load.figures;
    const moved = { ...load, figures: [{ ...first!, title: 'another' }, ...others] };
    const after = { ...view!, chapters: view!.chapters.map((chapter) => (chapter === load ? moved : chapter)) };
    const { chapters } = toViewChange(view!, after);
    expect(chapters).toEqual([
      { id: load.id, parts: {}, figures: [{ ...first!, title: 'another' }, ...others.map((_, index) => index + 1)] },
    ]);
  });

  it('is told nothing where nothing changed', () => {
    const [assessment] = assessments;
    const again = toWorkspaceView(structuredClone(assessment!));
    expect(toViewChange(views[0]!, again)).toEqual({ rows: [], gone: [], chapters: [], rest: {} });
  });
});
