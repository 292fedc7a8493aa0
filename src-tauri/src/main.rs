//! The desktop program: opens the window.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() {
    wellkept_window::run();
}
