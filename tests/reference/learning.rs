//! Learning over repeated work, against printed tables of the unit curve.

use benchslate_core::timing::learning::sum_to;

/// Units, then time of the n-th and of all n for rates of 70, 75, 80, 85 and 90 %, the first taken as 1.
type Row = (u32, [(f64, f64); 5]);

const RATES: [f64; 5] = [0.70, 0.75, 0.80, 0.85, 0.90];

fn check(rows: &[Row], near: f64) {
    for (n, of_rates) in rows {
        for (rate, (unit, total)) in RATES.iter().zip(of_rates) {
            let b = rate.log2();
            assert!((f64::from(*n).powf(b) - unit).abs() < near, "{n}, {rate}: unit {unit}");
            assert!(
                (sum_to(*n, b) - total).abs() < near,
                "{n}, {rate}: total {total}, here {}",
                sum_to(*n, b)
            );
        }
    }
}

// Source: published — W. J. Stevenson, Operations Management, table of unit and total time factors, rows 1 to 3.
#[test]
fn the_first_rows_of_the_printed_table_of_learning() {
    check(
        &[
            (1, [(1.0, 1.0), (1.0, 1.0), (1.0, 1.0), (1.0, 1.0), (1.0, 1.0)]),
            (2, [(0.700, 1.700), (0.750, 1.750), (0.800, 1.800), (0.850, 1.850), (0.900, 1.900)]),
            (3, [(0.568, 2.268), (0.634, 2.384), (0.702, 2.502), (0.773, 2.623), (0.846, 2.746)]),
        ],
        0.000_51,
    );
}

// Source: common practice — further rows of the same table, worked out by its formula n^(log2 rate).
#[test]
fn further_rows_of_the_table_of_learning() {
    check(
        &[
            (4, [(0.4900, 2.7582), (0.5625, 2.9463), (0.6400, 3.1421), (0.7225, 3.3454), (0.8100, 3.5562)]),
            (5, [(0.4368, 3.1950), (0.5127, 3.4591), (0.5956, 3.7377), (0.6857, 4.0311), (0.7830, 4.3392)]),
            (10, [(0.3058, 4.9318), (0.3846, 5.5886), (0.4765, 6.3154), (0.5828, 7.1161), (0.7047, 7.9945)]),
            (
                20,
                [(0.2141, 7.4065), (0.2884, 8.8284), (0.3812, 10.4849), (0.4954, 12.4023), (0.6342, 14.6078)],
            ),
        ],
        0.000_051,
    );
}
