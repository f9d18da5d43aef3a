// Stands in for `server-only`, which throws wherever there is no server bundler to remove it.
export {};
