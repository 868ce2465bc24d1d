// A build on paper: one page of A4 and of Letter, also with nine kinds and long names, by day and by night.
import assert from "node:assert/strict";
import { journey } from "./lib/journey.mjs";
import { logHours, setRate, sheetOf, startBuild } from "./lib/acts.mjs";

/** How many pages a PDF has, by its own count. */
const pages = (pdf) => Number(pdf.toString("latin1").match(/\/Type\s*\/Pages[^>]*\/Count (\d+)/)?.[1] ?? pdf.toString("latin1").match(/\/Count (\d+)/)[1]);

async function onePage(page, what) {
  for (const format of ["A4", "Letter"]) {
    assert.equal(pages(await page.pdf({ format, preferCSSPageSize: false })), 1, `${what} on ${format}`);
  }
}

journey("every build of the sample shop is one page", async ({ page, thumb, go }) => {
  await thumb.tap(/^Look around a sample shop/);
  await thumb.sheet(/Gymnasium-floor trays, second run/);
  await go("builds");
  const links = page.getByRole("region", { name: "Builds, latest first" }).or(page.getByRole("list", { name: "Builds, latest first" })).getByRole("link");
  await links.first().waitFor();
  const builds = await links.evaluateAll((all) => all.map((link) => link.href.match(/build\.([^.]+)\./)?.[1]).filter(Boolean));
  assert.ok(builds.length >= 3);
  for (const build of new Set(builds)) {
    await go(`print.${build}`);
    await page.getByRole("article").waitFor();
    await onePage(page, build);
  }
});

journey("long names and many things stay on one page", async ({ page, thumb, go }) => {
  await startBuild(thumb);
  await setRate(thumb, "26");
  await logHours(thumb, "2 h 15", "mill", { day: "yesterday" });
  const long = "Offcuts of an altogether unreasonably long wall panelling from the second floor ";
  for (let at = 0; at < 16; at += 1) {
    await go("expense");
    await thumb.type("What for", `${long}${at}`);
    await thumb.type("Paid", "12");
    await thumb.tap(/^Keep/);
    await thumb.kept("12.00");
  }
  await sheetOf(thumb, "Cost");
  await thumb.tap(/^Print on one page/);
  await page.getByRole("article").filter({ hasText: "True cost" }).waitFor();
  await onePage(page, "a long one");
});
