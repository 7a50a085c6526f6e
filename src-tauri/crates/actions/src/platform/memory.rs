//! What the system may write of this process's memory.

/// Keeps passphrases and keys out of core dumps: the system writes none of this process, whatever becomes of it. To be called first.
///
/// On Linux this also keeps other programs of the same user from reading its memory. Elsewhere than on Unix nothing is done, and a
/// program that this one starts decides for itself.
pub fn keep_out_of_core_dumps() {
    #[cfg(unix)]
    {
        use rustix::process::{Resource, Rlimit, setrlimit};
        // A system that refuses this runs the program all the same, with dumps as it is set up to write them.
        let _ = setrlimit(Resource::Core, Rlimit { current: Some(0), maximum: Some(0) });
    }
    #[cfg(any(target_os = "linux", target_os = "android"))]
    {
        use rustix::process::{DumpableBehavior, set_dumpable_behavior};
        let _ = set_dumpable_behavior(DumpableBehavior::NotDumpable);
    }
}

#[cfg(all(test, target_os = "linux"))]
mod tests {
    use rustix::process::{DumpableBehavior, Resource, dumpable_behavior, getrlimit};

    #[test]
    fn the_system_writes_nothing_of_this_process() {
        super::keep_out_of_core_dumps();
        assert_eq!(getrlimit(Resource::Core).maximum, Some(0));
        assert_eq!(dumpable_behavior(), Ok(DumpableBehavior::NotDumpable));
    }
}
