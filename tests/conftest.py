"""Settings for all tests."""

import os

from hypothesis import settings

# A busy machine is no failure. The gate tries the same examples each time; other runs try new ones.
settings.register_profile("here", deadline=None)
settings.register_profile("gate", deadline=None, derandomize=True)
settings.load_profile("gate" if os.environ.get("CI") else "here")
