// Runs in the page before anything else: how long after a press or a letter the list has moved and been painted.
window.listMoves = () =>
  new Promise((done) => {
    let began = 0;
    for (const kind of ['click', 'input'])
      document.addEventListener(
        kind,
        () => {
          began ||= performance.now();
        },
        { capture: true, once: true },
      );
    // an answer moves the count beside the title, or what stands in the rows
    const see = new MutationObserver(() => {
      if (began === 0) return;
      see.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - began), 0));
    });
    for (const one of document.querySelectorAll('.top .u, .rows'))
      see.observe(one, { childList: true, subtree: true, characterData: true });
    setTimeout(() => done(-1), 3000);
  });
