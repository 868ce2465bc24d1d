// What the thumb does in the rounds: one act after the other, as fast as the page takes them.

const STAGES = /^(Start |buy and haul|reclaim|set up|clean up|flatten|design|mill|cut|joinery|glue-up|flatten|assemble|sand|finish)\b/;

/** From nothing to the bench of a first build. */
export async function begin(page) {
  await page.getByRole("link", { name: /^start a build/i }).click();
  await page.getByRole("textbox").first().fill("Tray 9");
  await page.getByRole("textbox").first().press("Enter");
}

/** Starts a stage, changes over to another, and goes on for ever; ends by an error when the page is gone. */
export async function keepChangingOver(page) {
  // Always the first key on show: how many there are may change between counting them and the tap.
  const key = page.getByRole("button", { name: STAGES }).first();
  for (;;) await key.click({ timeout: 10000 });
}

/** Takes a journal in. */
export async function bringIn(page, url, journal) {
  await page.goto(`${url}?at=bring-in`);
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    page.getByRole("button", { name: "Choose a file" }).click(),
  ]);
  await chooser.setFiles({ name: "journal.jsonl", mimeType: "application/jsonl", buffer: Buffer.from(journal) });
  await page.getByRole("button", { name: /^Take it/ }).click({ timeout: 60000 });
  await page.getByRole("button", { name: "To the shop" }).waitFor({ timeout: 60000 });
}
