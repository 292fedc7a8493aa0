//! Makes each of the window's own commands a permission, which `capabilities/main.json` then grants.

fn main() {
    let manifest = tauri_build::AppManifest::new().commands(&[
        "ask",
        "take_in",
        "read_paper",
        "stop_reading",
        "find_corners",
        "straighten",
        "save_card",
        "save_brief",
        "save_report",
        "document",
        "save_document",
        "hand_over",
        "bring_book",
        "receive_book",
        "shared",
        "take_shared",
        "leave_shared",
    ]);
    if let Err(refusal) = tauri_build::try_build(tauri_build::Attributes::new().app_manifest(manifest)) {
        println!("cargo::error={refusal:#}");
    }
}
