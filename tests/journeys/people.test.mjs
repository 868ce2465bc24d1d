// People with dated rates, paid or unpaid.
import { BUILD, addPerson, logHours, setRate, sheetOf, startBuild } from "./lib/acts.mjs";
import { journey } from "./lib/journey.mjs";

journey("a rate makes hours a cost; without one the cost says which is missing", async ({ thumb }) => {
  await startBuild(thumb);
  await logHours(thumb, "2 h", "mill");
  await sheetOf(thumb, "Cost");
  await thumb.sees("No rate for you");
  await setRate(thumb, "26");
  await sheetOf(thumb, "Cost");
  await thumb.key(/^Labour\s*52\.00/).waitFor();
});

journey("hours follow the rate of their day", async ({ thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "26");
  await logHours(thumb, "1 h", "mill", { day: "yesterday" });
  await logHours(thumb, "1 h", "sand");
  await setRate(thumb, "30", { from: "2026-11-20" });
  await thumb.sees(/since Fri,? Nov 20.*26\.00/);
  await sheetOf(thumb, "Cost");
  await thumb.key(/^Labour\s*56\.00/).waitFor();
});

journey("a helper who is paid is money out; own time is not", async ({ thumb }) => {
  await startBuild(thumb);
  await setRate(thumb, "26");
  await addPerson(thumb, "Tobin", { rate: "20", paid: true });
  await logHours(thumb, "3 h", "sand", { who: "Tobin" });
  await thumb.kept("sand 3 h 00, Tobin");
  await logHours(thumb, "1 h", "mill", { who: "Me" });
  await sheetOf(thumb, "Cost");
  await thumb.sees(`Spent 60.00, used up 60.00`);
  await thumb.key(/^True cost.*86\.00/).waitFor();
});

journey("a person without a name is refused by the field", async ({ thumb, go }) => {
  await startBuild(thumb, BUILD);
  await go("person");
  await thumb.type("An hour", "20");
  await thumb.tap("Keep");
  await thumb.refused("Name", "No name yet");
});
