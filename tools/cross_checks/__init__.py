"""Parts of tools/crosscheck.py. Nothing here shares code with the program that wrote the files."""


class Tally:
    """Counts checks and tells the failed ones."""

    def __init__(self):
        self.passed = 0
        self.failed = 0

    def check(self, ok, where, what):
        if ok:
            self.passed += 1
        else:
            self.failed += 1
            print(f"FAILED {where}: {what}")
        return bool(ok)
