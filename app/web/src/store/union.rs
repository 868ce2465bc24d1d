//! What a batch of lines means beside what is there: which are new, which are there already, and
//! which clash. Pure; tested natively.
//!
//! The rule for a clash makes the union the same on every device whatever came first: of two lines
//! under one id the one with the greater SHA-256 is kept, the other put aside and reported.

use benchslate_core::measure::Map;

use super::revisions::{Clash, NewRow};
use super::tally::{Tally, digest};

/// A line under its id, and where it stands.
pub(super) struct Slot {
    line: String,
    place: Place,
}

enum Place {
    /// In the database, at this `seq`.
    Stored(u64),
    /// In the batch, at this place of [`Plan::add`].
    Fresh(usize),
}

impl Slot {
    /// A line that is in the database.
    pub(super) fn stored(seq: u64, line: String) -> Self {
        Self { line, place: Place::Stored(seq) }
    }
}

/// What is to be done.
#[derive(Debug, Default, PartialEq, Eq)]
pub(super) struct Plan {
    /// To be added, in the order of arrival.
    pub(super) add: Vec<NewRow>,
    /// `seq` of rows that give way.
    pub(super) drop: Vec<u64>,
    /// Lines put aside.
    pub(super) aside: Vec<NewRow>,
    /// What clashed.
    pub(super) clashes: Vec<Clash>,
    /// How many were there already, byte for byte.
    pub(super) already: usize,
    /// The tally afterwards.
    pub(super) tally: Tally,
}

/// Works out what to do with `rows`, given what stands under their ids and the tally of all rows.
pub(super) fn plan(tally: Tally, mut slots: Map<String, Slot>, rows: &[NewRow]) -> Plan {
    let mut plan = Plan { tally, ..Plan::default() };
    for row in rows {
        match slots.get_mut(&row.id) {
            Some(slot) if slot.line == row.line => plan.already += 1,
            Some(slot) => plan.clash(slot, row),
            None => {
                let place = Place::Fresh(plan.add.len());
                slots.insert(row.id.clone(), Slot { line: row.line.clone(), place });
                plan.tally.add(&row.line);
                plan.add.push(row.clone());
            }
        }
    }
    plan
}

impl Plan {
    fn clash(&mut self, slot: &mut Slot, row: &NewRow) {
        let new_won = digest(&row.line) > digest(&slot.line);
        self.clashes.push(Clash { id: row.id.clone(), new_won });
        if !new_won {
            self.aside.push(row.clone());
            return;
        }
        self.tally.take(&slot.line);
        self.tally.add(&row.line);
        let line = std::mem::replace(&mut slot.line, row.line.clone());
        self.aside.push(NewRow { id: row.id.clone(), line });
        match slot.place {
            Place::Stored(seq) => {
                // A fresh `seq`, so that the other windows hear of it.
                self.drop.push(seq);
                slot.place = Place::Fresh(self.add.len());
                self.add.push(row.clone());
            }
            Place::Fresh(at) => {
                if let Some(added) = self.add.get_mut(at) {
                    added.line.clone_from(&row.line);
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(id: &str, line: &str) -> NewRow {
        NewRow { id: id.to_owned(), line: line.to_owned() }
    }

    fn on_the_shelf(line: &str) -> (Tally, Map<String, Slot>) {
        (Tally::of([line]), Map::from_iter([("a".to_owned(), Slot::stored(7, line.to_owned()))]))
    }

    /// The lines kept after these batches, and the tally.
    fn kept(batches: &[&[NewRow]]) -> (Map<String, String>, Tally) {
        let (mut lines, mut tally) = (Map::<String, String>::new(), Tally::default());
        for batch in batches {
            let slots = lines.iter().map(|(id, line)| (id.clone(), Slot::stored(1, line.clone()))).collect();
            let plan = plan(tally, slots, batch);
            tally = plan.tally;
            lines.extend(plan.add.into_iter().map(|row| (row.id, row.line)));
        }
        (lines, tally)
    }

    #[test]
    fn a_line_there_already_is_skipped() {
        let (tally, slots) = on_the_shelf("oak");
        let plan = plan(tally, slots, &[row("a", "oak"), row("b", "maple"), row("b", "maple")]);
        assert_eq!((plan.add, plan.already), (vec![row("b", "maple")], 2));
        assert_eq!(plan.tally, Tally::of(["oak", "maple"]));
        assert!(plan.clashes.is_empty() && plan.drop.is_empty());
    }

    #[test]
    fn of_two_lines_under_one_id_the_greater_hash_is_kept_and_the_other_put_aside() {
        let (low, high) = if digest("oak") < digest("ash") { ("oak", "ash") } else { ("ash", "oak") };
        let (tally, slots) = on_the_shelf(low);
        let won = plan(tally, slots, &[row("a", high)]);
        assert_eq!((won.drop, won.add, won.aside), (vec![7], vec![row("a", high)], vec![row("a", low)]));
        assert_eq!(won.tally, Tally::of([high]));
        let (tally, slots) = on_the_shelf(high);
        let lost = plan(tally, slots, &[row("a", low)]);
        assert_eq!((lost.drop, lost.add, lost.aside), (vec![], vec![], vec![row("a", low)]));
        assert_eq!(lost.clashes, vec![Clash { id: "a".to_owned(), new_won: false }]);
        assert_eq!(lost.tally, Tally::of([high]));
    }

    #[test]
    fn the_union_is_the_same_whatever_came_first() {
        let one = [row("a", "oak"), row("b", "maple")];
        let two = [row("a", "ash"), row("c", "walnut"), row("a", "elm")];
        let forth = kept(&[&one, &two]);
        assert_eq!(forth, kept(&[&two, &one]));
        assert_eq!(forth, kept(&[&one, &two, &one, &two]));
        assert_eq!(forth.1, Tally::of(forth.0.values().map(String::as_str)));
    }
}
