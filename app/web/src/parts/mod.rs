//! Drawn components: they take plain values and give events, hold no store and work nothing out.
pub mod answer; // the figure a sheet is about; the leading three; a row that opens
pub mod beside;
pub mod board; // a plank to scale
pub mod bridge; // spent, used up, true cost
pub mod build_row; // a build in the list of builds
pub mod chain;
pub mod core_column; // cost by kind to scale
pub mod cut_bar; // a board as it is cut
pub mod dim;
pub mod drying_bar; // a dimension line
pub mod facts; // a ruled list of what stands where
pub mod field; // label, well, error; cells of a form
pub mod first_run; // the first sheet's drawing
pub mod fixed_date;
pub mod fold; // a row that opens in place
pub mod goes_on; // the long-break line
pub mod growth; // an opened figure, level by level
pub mod hatch; // patterns by kind, areas and swatches
pub mod journal_line; // time | kind | amount; struck, corrected
pub mod kept_row;
pub mod key; // the drawn key
pub mod mark; // the last mark, with Undo
pub mod message; // messages and cautions
pub mod money_board; // bought instead, cash, own time, saved; worth it?
pub mod pad; // number pads
pub mod pick; // one of many, by the device's own list
pub mod plain; // numbers of a drawing as text
pub mod plan_drawing; // dates and work on one scale
pub mod scale;
pub mod seg; // a set of one-of
pub mod sheet; // sheet, head, read, hand
pub mod shelf_row; // a lot or item on the shelf
pub mod shot_row; // a planned shot: frame, takes, words
pub mod slate; // running slate, two clocks, slim, next
pub mod steel_rule; // fraction keys that add
pub mod stick_fraction; // 19 3/8 as on a stick
pub mod stretch; // a stretch of work, with its "earlier" pieces
pub mod sum_row; // a sum by hand
pub mod tally; // strokes in fives
pub mod tick_row;
pub mod time_bar; // a row with a box
pub mod time_line; // a build on one line of time
pub mod tin; // a tin with its quarters
pub mod title_block; // the five places, a build's sheets
pub mod way_row;
pub mod wear; // what would help, with a key to try it
