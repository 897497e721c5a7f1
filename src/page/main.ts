/** The page's entry: the grid first, then the pane beside it; each in a chunk of its own. */
performance.mark('script start');

async function showPage(): Promise<void> {
  const [{ openPage }] = await Promise.all([import('./open-page.ts')]);
  await openPage();
}

void showPage();
