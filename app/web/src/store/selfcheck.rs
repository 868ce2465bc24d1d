//! Counting over: do the rows come to what the tally beside them says?
//!
//! First in small pieces when the browser is idle. Only a difference is looked at again in one
//! transaction, since another window may have written in between.

use super::door::{Door, Mode};
use super::failure::{At, Failure};
use super::revisions::sound_and_damaged;
use super::schema::{META, QUARANTINE, REVISIONS};
use super::tally::Tally;
use super::{meta, value};
use crate::platform::idle;

/// Rows read between two looks at whether the browser has better things to do.
const PIECE: u32 = 500;

/// Recounts in idle time.
///
/// # Errors
/// [`Failure::Damaged`] with what was found; any other failure of reading.
pub(super) async fn check(door: &Door) -> Result<(), Failure> {
    let kept = kept(door).await?;
    let mut found = Tally::default();
    let mut seq = 0;
    loop {
        idle::idle().await;
        let act = door.begin(&[REVISIONS], Mode::Read)?;
        let (rows, damaged) = sound_and_damaged(&act, seq, PIECE).await?;
        let Some(last) = rows.iter().map(|row| row.seq).chain(damaged.iter().copied()).max() else { break };
        rows.iter().for_each(|row| found.add(&row.line));
        if let Some(seq) = damaged.first() {
            return Err(Failure::Damaged { at: At::Row(*seq) });
        }
        seq = last;
    }
    if found == kept || with_what_came_since(door, found, seq).await? { Ok(()) } else { at_once(door).await }
}

/// Whether it comes to the tally as it is now, with the rows above `seq` that were written while the others were
/// counted. Only where it doesn't all are counted again: that takes a tap's time, and whoever writes is at the bench.
async fn with_what_came_since(door: &Door, mut found: Tally, seq: u64) -> Result<bool, Failure> {
    let act = door.begin(&[REVISIONS, META], Mode::Read)?;
    let kept = meta::ask_tally(&act)?;
    let (rows, _damaged) = sound_and_damaged(&act, seq, u32::MAX).await?;
    rows.iter().for_each(|row| found.add(&row.line));
    Ok(found == meta::tally_from(&kept.answered().await?))
}

/// Writes the tally of what is there: the difference has been said and is accepted. Rows without
/// an id or a line go to quarantine as they are.
pub(super) async fn mend(door: &Door) -> Result<Tally, Failure> {
    let act = door.begin(&[REVISIONS, META, QUARANTINE], Mode::Strict)?;
    let (rows, damaged) = sound_and_damaged(&act, 0, u32::MAX).await?;
    for seq in damaged {
        let row = act.get(REVISIONS, &value::from_number(seq))?.answered().await?;
        let kept = value::record(&[("row", row), ("why", "unreadable".into())]);
        act.put(QUARANTINE, &format!("row {seq}").into(), &kept)?;
        act.delete(REVISIONS, &value::from_number(seq))?;
    }
    let found = Tally::of(rows.iter().map(|row| row.line.as_str()));
    meta::put_tally(&act, found)?;
    act.ended().await?;
    Ok(found)
}

async fn at_once(door: &Door) -> Result<(), Failure> {
    let act = door.begin(&[REVISIONS, META], Mode::Read)?;
    let kept = meta::ask_tally(&act)?;
    let (rows, _damaged) = sound_and_damaged(&act, 0, u32::MAX).await?;
    let kept = meta::tally_from(&kept.answered().await?);
    let found = Tally::of(rows.iter().map(|row| row.line.as_str()));
    if found == kept { Ok(()) } else { Err(Failure::Damaged { at: At::Check { kept, found } }) }
}

async fn kept(door: &Door) -> Result<Tally, Failure> {
    let act = door.begin(&[META], Mode::Read)?;
    Ok(meta::tally_from(&meta::ask_tally(&act)?.answered().await?))
}
