//! Home of the reference checks (`reference/`), the loads (`loads/`) and the journeys (`journeys/`).
