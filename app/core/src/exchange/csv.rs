//! Comma-separated values: one table as text that a spreadsheet opens.
//!
//! RFC 4180: fields parted by commas, records ended by CR LF, a field with a comma, a quote or a line break in quotes, quotes
//! in it doubled. UTF-8 without a mark in front. A text that a spreadsheet could run as a formula gets an apostrophe before
//! it, and quotes around it: OWASP, "CSV injection", which names `=`, `+`, `-`, `@`, tab, CR and LF, and the wide forms of
//! the four signs. Numbers and dates that the program wrote stay as they are: `-12.50` is a number.
//! Not here: which columns there are (`tables`).

/// How a browser knows the format.
pub const MEDIA_TYPE: &str = "text/csv;charset=utf-8";

/// What stands in a field.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Cell {
    /// Somebody's words.
    Text(String),
    /// A number, day or moment that the program wrote.
    Plain(String),
    /// Nothing.
    Empty,
}

impl Cell {
    /// Words; none where there are none.
    pub fn text(text: &str) -> Cell {
        if text.is_empty() { Cell::Empty } else { Cell::Text(text.to_owned()) }
    }

    /// What the program wrote; none where it wrote nothing.
    pub fn plain(it: Option<impl ToString>) -> Cell {
        it.map_or(Cell::Empty, |it| Cell::Plain(it.to_string()))
    }
}

/// A head and its rows.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Table {
    /// Names of the columns.
    pub head: Vec<String>,
    /// A cell a column.
    pub rows: Vec<Vec<Cell>>,
}

impl Table {
    /// The whole file.
    pub fn csv(&self) -> String {
        let mut text = String::new();
        let head = self.head.iter().map(|name| Cell::text(name)).collect();
        for row in std::iter::once(&head).chain(&self.rows) {
            record(row, &mut text);
        }
        text
    }
}

fn record(cells: &[Cell], text: &mut String) {
    for (at, cell) in cells.iter().enumerate() {
        if at > 0 {
            text.push(',');
        }
        match cell {
            Cell::Text(words) => field(words, text),
            Cell::Plain(plain) => text.push_str(plain),
            // A record of one empty field would be no record to many a reader.
            Cell::Empty if cells.len() == 1 => text.push_str("\"\""),
            Cell::Empty => {}
        }
    }
    text.push_str("\r\n");
}

fn field(words: &str, text: &mut String) {
    let runs = could_run(words);
    // A semicolon or a tab parts fields where a comma is the decimal mark: what is after it must not begin one.
    let quoted = runs || words.contains([',', '"', '\r', '\n', ';', '\t']);
    if !quoted {
        return text.push_str(words);
    }
    text.push('"');
    if runs {
        text.push('\'');
    }
    for letter in words.chars() {
        if letter == '"' {
            text.push('"');
        }
        text.push(letter);
    }
    text.push('"');
}

/// Whether a spreadsheet could take it for a formula.
pub fn could_run(words: &str) -> bool {
    words.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn row(cells: &[&str]) -> String {
        let table =
            Table { head: vec!["a".into()], rows: vec![cells.iter().map(|it| Cell::text(it)).collect()] };
        table.csv().strip_prefix("a\r\n").expect("the head").to_owned()
    }

    /// Every record as another program reads it, the head too.
    fn read(text: &str) -> Vec<Vec<String>> {
        let reader = csv::ReaderBuilder::new().has_headers(false).flexible(true).from_reader(text.as_bytes());
        let records = reader.into_records().map(|record| record.expect("a record"));
        records.map(|record| record.iter().map(str::to_owned).collect()).collect()
    }

    // Source: published — RFC 4180, section 2, rules 1 and 5 to 7.
    #[test]
    fn quotes_commas_and_line_breaks_are_quoted_and_spaces_are_data() {
        let cells = ["a \"quoted\", 2\" x 4\"", "line1\nline2", "", "plain", " lead"];
        let want = "\"a \"\"quoted\"\", 2\"\" x 4\"\"\",\"line1\nline2\",,plain, lead\r\n";
        assert_eq!(row(&cells), want);
        assert_eq!(read(want), [cells]);
    }

    // Source: published — OWASP, "CSV injection": the characters and both examples.
    #[test]
    fn what_could_run_as_a_formula_gets_an_apostrophe() {
        for (words, want) in [
            ("=1+2\";=1+2", "\"'=1+2\"\";=1+2\"\r\n"),
            ("=1+2'\" ;,=1+2", "\"'=1+2'\"\" ;,=1+2\"\r\n"),
            ("+49 30", "\"'+49 30\"\r\n"),
            ("-12.50", "\"'-12.50\"\r\n"),
            ("@sum", "\"'@sum\"\r\n"),
            ("\tx", "\"'\tx\"\r\n"),
            ("\rx", "\"'\rx\"\r\n"),
            ("\nx", "\"'\nx\"\r\n"),
            ("＝1", "\"'＝1\"\r\n"),
            ("a;=1+2", "\"a;=1+2\"\r\n"),
            ("2 x 4 = 8", "2 x 4 = 8\r\n"),
        ] {
            assert_eq!(row(&[words]), want, "{words:?}");
        }
    }

    #[test]
    fn a_number_of_ours_is_no_formula() {
        let table = Table { head: vec!["a".into()], rows: vec![vec![Cell::plain(Some("-12.50"))]] };
        assert_eq!(table.csv(), "a\r\n-12.50\r\n");
    }

    proptest! {
        // Source: library — the crate `csv` 1.
        #[test]
        fn any_text_survives_another_reader(rows in prop::collection::vec(prop::collection::vec("(?s).{0,12}", 1..5), 0..6)) {
            let cells = |row: &Vec<String>| row.iter().map(|it| Cell::text(it)).collect();
            let table = Table { head: vec!["one".into(), "two".into()], rows: rows.iter().map(cells).collect() };
            let back = read(&table.csv());
            prop_assert_eq!(&back[0], &["one".to_owned(), "two".to_owned()]);
            let guarded = |it: &String| if could_run(it) { format!("'{it}") } else { it.clone() };
            let want: Vec<Vec<String>> = rows.iter().map(|row| row.iter().map(guarded).collect()).collect();
            prop_assert_eq!(&back[1..], &want[..]);
        }
    }
}
