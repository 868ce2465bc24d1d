//! Loads: kept files of every released format, and files made to break the program.

mod crashers;
mod folder;
mod linear;
mod stored;
