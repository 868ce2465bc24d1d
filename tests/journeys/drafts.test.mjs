// Drafts: what is typed is there again after leaving, reloading, closing; and goes once it was kept.
import assert from "node:assert/strict";
import { startBuild } from "./lib/acts.mjs";
import { drafts } from "./lib/disk.mjs";
import { journey } from "./lib/journey.mjs";
import { until } from "./lib/thumb.mjs";

const filled = (thumb, label, text) => until(`${label} holds ${text}`, async () => (await thumb.field(label).inputValue()) === text);

journey("a name that was typed is there after a reload and in a new window", async ({ page, thumb, open }) => {
  await thumb.tap(/^Start a build/);
  await thumb.type("What is it?", "Pew bench");
  await thumb.tap("Leave");
  await thumb.tap(/^Start a build/);
  await filled(thumb, "What is it?", "Pew bench");
  await page.reload();
  await filled(thumb, "What is it?", "Pew bench");
  await page.close();
  const again = await open("new-build");
  await filled(again.thumb, "What is it?", "Pew bench");
  await again.thumb.tap("Start it");
  await again.thumb.kept("Pew bench");
  await again.page.goto(again.page.url().replace("at=bench", "at=new-build"));
  await filled(again.thumb, "What is it?", "");
});

for (const [place, fields] of [
  ["new-lot", { "what, or from where": "barn oak", "rough quantity": "23 3/4", paid: "0" }],
  ["hours", { "How long": "2 h 1", "Note, if any": "pulling nails" }],
  ["note", { "What is it about?": "The third board has a shake at 40 cm" }],
  ["expense", { "What for": "hire", Paid: "60" }],
]) {
  journey(`half of ${place} is typed, the window is closed, and it is all there`, async ({ page, thumb, go, open }) => {
    await startBuild(thumb);
    await go(place);
    // A hand is slower than a program: the first keys are kept before the last.
    const [[first, begun]] = Object.entries(fields);
    await thumb.type(first, begun.slice(0, -1));
    await until("the first keys are kept", async () => JSON.stringify(await drafts(page)).includes(begun.slice(0, -1)));
    for (const [label, text] of Object.entries(fields)) await thumb.type(label, text);
    // The last key is kept when the page is left, too.
    await page.close({ runBeforeUnload: true });
    const again = await open(place);
    for (const [label, text] of Object.entries(fields)) await filled(again.thumb, label, text);
    assert.equal(await again.page.getByRole("alert").filter({ hasText: /\w/ }).count(), 0, "nothing half typed is called wrong");
  });
}
