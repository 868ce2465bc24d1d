//! The revisions: added in one piece with what belongs to them, read in chunks, never changed.
//!
//! One act of the maker is one transaction, durability `strict`, over the revisions, the tally of
//! them and what the first screen shows. The look at what other windows wrote is inside it too:
//! the engine lets one writer in at a time, so that "one clock a person" holds across windows
//! without a lock or a leader.

use benchslate_core::measure::Map;
use std::collections::BTreeSet;

use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};

use super::act::{Act, Asked};
use super::door::{Door, Mode};
use super::failure::{At, Failure};
use super::photos::NewPhoto;
use super::schema::{BY_ID, META, PHOTOS, QUARANTINE, REVISIONS, THUMBS};
use super::tally::digest;
use super::union::{Plan, Slot, plan};
use super::{meta, photos, value};

/// From how many rows on reading everything once is less work than asking for each id.
const MANY: usize = 500;

/// A line to be kept, byte for byte, with the id that it carries.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NewRow {
    /// The revision's id, a UUID as text.
    pub id: String,
    /// The line, without its line end.
    pub line: String,
}

/// A line that is kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Order of arrival on this device, from 1, with holes.
    pub seq: u64,
    /// The revision's id.
    pub id: String,
    /// The line, byte for byte as first written.
    pub line: String,
}

/// What came of an append or a merge: it is on the disk.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Appended {
    /// The greatest `seq` now. After `append` the caller knows all rows up to it; after `merge` it
    /// may not, and reads on from the `seq` that it knew.
    pub seq_after: u64,
    /// How many lines were new.
    pub added: usize,
    /// How many were there already, byte for byte.
    pub already: usize,
    /// Ids that were met with two different lines.
    pub clashes: Vec<Clash>,
}

/// Lines in the order of arrival, from one `seq` to another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    /// As first written.
    pub lines: Vec<String>,
    /// Up to here, this one too.
    pub up_to: u64,
    /// The last that there is.
    pub newest: u64,
}

/// So many `seq` are read in one piece.
const PIECE: u64 = 1000;

/// One id with two different lines. The greater SHA-256 is kept, the other is in quarantine.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clash {
    /// The id.
    pub id: String,
    /// The line that came now was kept; otherwise the one that stood there.
    pub new_won: bool,
}

/// Why nothing was appended.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AppendError {
    /// Another window wrote in the meantime. Fold these and decide again.
    Behind {
        /// What it wrote: all rows above the `seq` that the caller knew.
        rows: Vec<Row>,
    },
    /// Storage failed.
    Failed(Failure),
}

/// How an attempt to write ended, where storage did not fail.
pub(super) enum Outcome {
    Kept(Appended),
    Behind(Vec<Row>),
}

/// Writes `rows`, `photos` and `bench` in one piece. With `known`, only if no other window wrote above it.
pub(super) async fn write(
    door: &Door,
    known: Option<u64>,
    rows: &[NewRow],
    photos: &[NewPhoto],
    bench: Option<&str>,
) -> Result<Outcome, Failure> {
    // The photos' stores are locked only by acts that write to them.
    let stores = [REVISIONS, META, QUARANTINE, PHOTOS, THUMBS];
    let stores = if photos.is_empty() { &stores[..3] } else { &stores[..] };
    let act = door.begin(stores, Mode::Strict)?;
    let tally = meta::ask_tally(&act)?;
    let newest = act.last(REVISIONS)?;
    if let Some(known) = known {
        let above = rows_above(&act, known, u32::MAX).await?;
        // Our own rows may be there: a write whose confirmation was lost with the connection.
        let ours: BTreeSet<&str> = rows.iter().map(|row| row.id.as_str()).collect();
        if above.iter().any(|row| !ours.contains(row.id.as_str())) {
            return Ok(Outcome::Behind(above));
        }
    }
    let newest = value::whole(&newest.answered().await?, "key").unwrap_or_default();
    let slots = standing(&act, rows).await?;
    let plan = plan(meta::tally_from(&tally.answered().await?), slots, rows);
    photos::put(&act, photos)?;
    let last = put(&act, &plan, bench)?;
    act.ended().await?;
    let seq_after = last.and_then(|asked| value::number(&asked.answer()?)).unwrap_or(newest);
    Ok(Outcome::Kept(Appended {
        seq_after,
        added: plan.add.len(),
        already: plan.already,
        clashes: plan.clashes,
    }))
}

/// The lines of a piece. Rows that can't be read are left out; the self-check names them.
pub(super) async fn piece(door: &Door, above: u64) -> Result<Piece, Failure> {
    let act = door.begin(&[REVISIONS], Mode::Read)?;
    let up_to = above.saturating_add(PIECE);
    let newest = act.last(REVISIONS)?;
    let values = act.between(REVISIONS, above, up_to)?;
    let newest = value::whole(&newest.answered().await?, "key").unwrap_or_default();
    let values: Array = values.answered().await?.unchecked_into();
    let (id, line) = (value::name("id"), value::name("line"));
    // Its id stands in the line: that the row has one too is enough.
    let sound = |kept: JsValue| value::text_at(&kept, &line).filter(|_| value::is_text_at(&kept, &id));
    Ok(Piece { lines: values.iter().filter_map(sound).collect(), up_to: up_to.min(newest), newest })
}

async fn rows_above(act: &Act, seq: u64, limit: u32) -> Result<Vec<Row>, Failure> {
    Ok(sound_and_damaged(act, seq, limit).await?.0)
}

/// The rows above a `seq`, and the `seq` of those that lack their id or their line.
pub(super) async fn sound_and_damaged(
    act: &Act,
    seq: u64,
    limit: u32,
) -> Result<(Vec<Row>, Vec<u64>), Failure> {
    // Both asked before either is waited for: one answer, one pause.
    let keys = act.keys_above(REVISIONS, seq, limit)?;
    let values = act.above(REVISIONS, seq, limit)?;
    let keys: Array = keys.answered().await?.unchecked_into();
    let values: Array = values.answered().await?.unchecked_into();
    let (mut sound, mut damaged) = (Vec::new(), Vec::new());
    let (id_field, line_field) = (value::name("id"), value::name("line"));
    for (key, kept) in keys.iter().zip(values.iter()) {
        let Some(seq) = value::number(&key) else { continue };
        match (value::text_at(&kept, &id_field), value::text_at(&kept, &line_field)) {
            (Some(id), Some(line)) => sound.push(Row { seq, id, line }),
            _ => damaged.push(seq),
        }
    }
    Ok((sound, damaged))
}

/// How many lines were put aside.
pub(super) async fn quarantine_count(door: &Door) -> Result<u64, Failure> {
    counted(door, QUARANTINE).await
}

async fn counted(door: &Door, store: &str) -> Result<u64, Failure> {
    let count = door.begin(&[store], Mode::Read)?.count(store)?.answered().await?;
    value::number(&count).ok_or(Failure::Damaged { at: At::Unreadable })
}

/// What stands under the ids of `rows`.
async fn standing(act: &Act, rows: &[NewRow]) -> Result<Map<String, Slot>, Failure> {
    if rows.len() >= MANY {
        let all = rows_above(act, 0, u32::MAX).await?;
        return Ok(all.into_iter().map(|row| (row.id, Slot::stored(row.seq, row.line))).collect());
    }
    let mut asked: Vec<(&NewRow, Asked, Asked)> = Vec::new();
    for row in rows {
        let id = JsValue::from_str(&row.id);
        asked.push((row, act.key_by(REVISIONS, BY_ID, &id)?, act.get_by(REVISIONS, BY_ID, &id)?));
    }
    let mut slots = Map::new();
    for (row, seq, kept) in asked {
        let (seq, kept) = (seq.answered().await?, kept.answered().await?);
        if let Some(seq) = value::number(&seq) {
            let line = value::text(&kept, "line").ok_or(Failure::Damaged { at: At::Row(seq) })?;
            slots.insert(row.id.clone(), Slot::stored(seq, line));
        }
    }
    Ok(slots)
}

/// Puts everything in one go, without a pause in which the engine might close the transaction.
fn put(act: &Act, plan: &Plan, bench: Option<&str>) -> Result<Option<Asked>, Failure> {
    for seq in &plan.drop {
        act.delete(REVISIONS, &value::from_number(*seq))?;
    }
    let mut last = None;
    for row in &plan.add {
        last = Some(act.add(REVISIONS, &record(row))?);
    }
    for row in &plan.aside {
        let key = digest(&row.line).iter().map(|byte| format!("{byte:02x}")).collect::<String>();
        let kept =
            [("id", row.id.as_str().into()), ("line", row.line.as_str().into()), ("why", "clash".into())];
        act.put(QUARANTINE, &key.into(), &value::record(&kept))?;
    }
    if !plan.add.is_empty() {
        meta::put_tally(act, plan.tally)?;
    }
    if let Some(bench) = bench {
        meta::put_bench(act, bench)?;
    }
    Ok(last)
}

fn record(row: &NewRow) -> JsValue {
    value::record(&[("id", row.id.as_str().into()), ("line", row.line.as_str().into())])
}
