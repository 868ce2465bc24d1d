//! Checks against published figures, standards and libraries; each names its source.
