// What the thumb does in the rounds: one act after the other, as fast as the page takes them.

const STAGES = ["sand", "mill", "finish", "glue up", "rough cut", "joinery"];

/** From nothing to a running clock: a build with a name, and its first stage. */
export async function begin(page) {
  await page.getByRole("button", { name: /^start a build/i }).click();
  await page.getByRole("textbox").first().fill("Tray 9");
  await page.keyboard.press("Enter");
}

/** Changes over to the next stage that has a key, and goes on for ever; ends when the page is gone. */
export async function keepChangingOver(page) {
  for (let turn = 0; ; turn += 1) {
    await page.getByRole("button", { name: new RegExp(`^${STAGES[turn % 3]}`, "i") }).first().click({ timeout: 5000 });
  }
}
