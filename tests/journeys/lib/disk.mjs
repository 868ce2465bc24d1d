// Looks past the program at what lies on the disk. Only to check that what is shown is what was kept.

/** The lines of the journal, in the order of their arrival. */
export const lines = async (page) => (await all(page, "revisions")).map((row) => row.line);

/** What was typed and not kept yet, a text a form. */
export const drafts = (page) => all(page, "drafts");

/** All that a store holds. Opens nothing that is not there. */
function all(page, store) {
  return page.evaluate(
    (store) =>
      new Promise((done, failed) => {
        const opened = indexedDB.open("benchslate");
        opened.onerror = () => failed(opened.error);
        opened.onupgradeneeded = () => opened.transaction.abort();
        opened.onsuccess = () => {
          const all = opened.result.transaction(store).objectStore(store).getAll();
          all.onerror = () => failed(all.error);
          all.onsuccess = () => {
            opened.result.close();
            done(all.result);
          };
        };
      }),
    store,
  );
}

/** All stretches as they stand: `{ from, to, person, stage }`, in the order in which they were begun. */
export async function stretches(page) {
  const all = (await lines(page)).map((line) => JSON.parse(line)).filter((line) => line.kind === "stretch");
  const last = new Map(all.map((line) => [line.entry, line.body]));
  return [...last.values()].filter(Boolean).sort((a, b) => Date.parse(a.from) - Date.parse(b.from));
}
