//! The core: cost by kind to scale in one column, a leader from each layer to its row.
//! A layer under 6 px is drawn 6, taken from the largest; its row repeats its hatching, so that it can be read.
use crate::dom::prelude::*;

use super::hatch::{Hatch, Hatching, Swatch};
use super::plain::Plain;
use super::stick_fraction::stick;
use super::sum_row::Leads;

/// A layer and its row.
#[derive(Clone, Default)]
pub struct Layer {
    pub kind: Hatch,
    pub label: String,
    /// The figure, or with `lacks` what is missing.
    pub figure: String,
    pub lacks: bool,
    /// Its share 0 to 1 of the whole; for the drawing only.
    pub share: f64,
    pub leads: Leads,
    /// It is opened beside the column.
    pub chosen: bool,
}

/// `total` stands on the dimension line beside the column.
#[component]
pub fn CoreColumn(layers: Vec<Layer>, #[prop(into)] total: String) -> impl IntoView {
    let shares: Vec<f64> = layers.iter().map(|layer| layer.share).collect();
    let heights = drawn_heights(&shares);
    let column = layers
        .iter()
        .zip(&heights)
        .filter(|(_, height)| **height > 0.0)
        .map(|(layer, height)| {
            view! { <span class="layer" style:block-size=format!("{:.3}%", Plain(*height))><Hatching kind=layer.kind/></span> }
        })
        .collect::<Vec<_>>();
    let nine = layers.len() > 8;
    let leaders = leaders(&heights);
    let rows = layers.into_iter().map(row).collect::<Vec<_>>();
    view! {
        <div class="core">
            <div class="vdim" aria-hidden="true">
                <svg viewBox="0 0 5.4 9"><path d="M2.7 0L0 9h5.4z"/></svg>
                <span>{total}</span>
                <svg viewBox="0 0 5.4 9"><path d="M2.7 9L0 0h5.4z"/></svg>
            </div>
            <div class="column" aria-hidden="true">{column}</div>
            {leaders}
            <ul class="core-rows" class:nine=nine>{rows}</ul>
        </div>
    }
}

/// Heights in per cent of the column, each at least six px of a column of 44 px a row.
fn drawn_heights(shares: &[f64]) -> Vec<f64> {
    let whole: f64 = shares.iter().filter(|share| **share > 0.0).sum();
    if whole <= 0.0 {
        return vec![0.0; shares.len()];
    }
    let least = LEAST_PX / (ROW_PX * rows_f64(shares.len())) * 100.0;
    let mut heights: Vec<f64> =
        shares.iter().map(|share| if *share > 0.0 { share / whole * 100.0 } else { 0.0 }).collect();
    let mut owed = 0.0;
    for height in heights.iter_mut().filter(|height| **height > 0.0 && **height < least) {
        owed += least - *height;
        *height = least;
    }
    if let Some(largest) = heights.iter_mut().max_by(|a, b| a.total_cmp(b)) {
        *largest = (*largest - owed).max(least);
    }
    heights
}

const LEAST_PX: f64 = 6.0;
const ROW_PX: f64 = 44.0;

/// A leader from the middle of each layer to the middle of its row. Heights in thousandths of the column.
fn leaders(heights: &[f64]) -> AnyView {
    let step = 1000.0 / rows_f64(heights.len());
    let mut top = 0.0;
    let mut paths = Vec::new();
    let mut row = step / 2.0;
    for height in heights {
        let from = top + height * 5.0;
        if *height > 0.0 {
            paths.push(view! {
                <path d=format!("M-1 {:.1}H5L13 {:.1}H22", Plain(from), Plain(row))/>
                <path class="end" d=format!("M-1 {:.1}H4", Plain(from))/>
            });
        }
        top += height * 10.0;
        row += step;
    }
    view! { <svg class="leaders" viewBox="0 0 22 1000" preserveAspectRatio="none" aria-hidden="true">{paths}</svg> }
}

/// A number of rows for the drawing; never nought.
fn rows_f64(rows: usize) -> f64 {
    u32::try_from(rows.max(1)).map_or(1.0, f64::from)
}

fn row(layer: Layer) -> AnyView {
    let opens = !matches!(layer.leads, Leads::Nowhere);
    let lacks = layer.lacks;
    let inner = view! {
        <Swatch kind=layer.kind/>
        <span class:open=opens>{stick(&layer.label)}</span>
        " "
        <span class="figure" class:lacks=lacks>{stick(&layer.figure)}</span>
    };
    view! { <li class:chosen=layer.chosen>{super::answer::led("row", layer.leads, inner)}</li> }
}

#[cfg(test)]
mod tests {
    use super::drawn_heights;

    #[test]
    fn a_thin_layer_is_drawn_six_px_at_the_cost_of_the_largest() {
        let heights = drawn_heights(&[0.9, 0.099, 0.001]);
        assert!((heights.iter().sum::<f64>() - 100.0).abs() < 1e-9);
        assert!((heights[2] - 6.0 / 132.0 * 100.0).abs() < 1e-9);
        assert!((heights[1] - 9.9).abs() < 1e-9);
    }

    #[test]
    fn a_kind_that_cost_nothing_has_no_layer() {
        assert_eq!(drawn_heights(&[1.0, 0.0]), [100.0, 0.0]);
        assert_eq!(drawn_heights(&[0.0, 0.0]), [0.0, 0.0]);
    }
}
