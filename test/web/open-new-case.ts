import type { TestPage, TestWorkspace } from './start-workspace.ts';

/** A page on one chapter of a new case of this name. */
export async function openNewCase(workspace: TestWorkspace, name: string, chapter: string): Promise<TestPage & { id: string }> {
  const opened = await workspace.page();
  await opened.page.goto(workspace.link);
  const id = await opened.page.evaluate(async (named) => {
    const response = await fetch('/api/cases', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ name: named, by: 'test' }),
    });
    return ((await response.json()) as { id: string }).id;
  }, name);
  await opened.page.goto(`${workspace.link}case/${id}/${chapter}`);
  await opened.page.waitForSelector('#chapter-title');
  return { ...opened, id };
}
