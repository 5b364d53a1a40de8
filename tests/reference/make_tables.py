"""Makes the tables that the tests in tests/proof hold the simulator to.

    python3 tests/reference/make_tables.py            (Debian: apt-get install python3-scipy)

Each is computed from the written equations by SciPy's LSODA at a tight tolerance; none of the
simulator's own code is used. Say a name to make one table only.
"""

import json
import sys
from pathlib import Path

import drum
import interspace
import purge
import regulator

TABLES = {"drum": drum, "interspace": interspace, "purge": purge, "regulator": regulator}


def main(names):
    folder = Path(__file__).parent / "tables"
    for name in names or TABLES:
        data = {
            "madeBy": "tests/reference/make_tables.py, LSODA of SciPy",
            "equations": TABLES[name].__doc__.split("\n")[0],
            "table": TABLES[name].table(),
        }
        (folder / f"{name}.json").write_text(json.dumps(data, indent=1) + "\n")


if __name__ == "__main__":
    main(sys.argv[1:])
