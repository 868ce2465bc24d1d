//! Drawn components: they take plain values and give events, hold no store and work nothing out.
pub mod dim; // a dimension line
pub mod field; // label, well, error; cells of a form
pub mod goes_on; // the long-break line
pub mod hatch; // patterns by kind, areas and swatches
pub mod journal_line; // time | kind | amount; struck, corrected
pub mod key; // the drawn key
pub mod mark; // the last mark, with Undo
pub mod seg; // a set of one-of
pub mod sheet; // sheet, head, read, hand
pub mod slate; // running slate, two clocks, slim, next
pub mod stick_fraction; // 19 3/8 as on a stick
pub mod stretch; // a stretch of work, with its "earlier" pieces
pub mod sum_row; // a sum by hand
pub mod tally; // strokes in fives
pub mod title_block; // the five places, a build's sheets
