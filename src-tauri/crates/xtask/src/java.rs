//! The part of the Android app that is Java and needs nothing of Android's: compiled for its oldest version, and tested.

use std::fs;
use std::path::Path;

use crate::setup;
use crate::shell::{Failure, Run, command, on_path, say, target};

/// Where papers wait that another app shared.
const FOLDER: &str = "src-tauri/gen/android/app/src/main/java/app/wellkept/book/SharedFolder.java";

const TEST: &str = "tests/android/SharedFolderTest.java";

/// What Gradle compiles it for, as in `gen/android`. It also keeps out what Android 7 does not have.
const RELEASE: &str = "8";

/// Compiles and runs the test; where there is neither a compiler nor apt, says so and goes on.
pub fn test() -> Result<(), Failure> {
    if !on_path("javac") {
        setup::ensure(setup::JAVA, "a Java compiler (JDK 17)")?;
    }
    if !on_path("javac") {
        say("no javac here, so the folder of shared papers is not tested");
        return Ok(());
    }
    let classes = target("android-java");
    let scratch = classes.join("scratch");
    if classes.is_dir() {
        fs::remove_dir_all(&classes).map_err(|error| Failure::at(&classes, &error))?;
    }
    fs::create_dir_all(&scratch).map_err(|error| Failure::at(&scratch, &error))?;
    compile(&classes, &["--release", RELEASE, "-Xlint:all,-options", "-Werror"], FOLDER)?;
    compile(&classes, &[], TEST)?;
    let mut java = command("java");
    java.arg("-classpath").arg(&classes).arg("app.wellkept.book.SharedFolderTest").arg(&scratch).run()
}

fn compile(classes: &Path, options: &[&str], source: &str) -> Result<(), Failure> {
    let mut javac = command("javac");
    javac.args(options).arg("-classpath").arg(classes).arg("-d").arg(classes).arg(source).run()
}
