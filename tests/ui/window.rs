//! The window, used by accessible label.
