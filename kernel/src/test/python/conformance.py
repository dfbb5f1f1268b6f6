# Bandwright. SPDX-License-Identifier: Apache-2.0
"""Jupyter's own tests of a kernel, and its checks of every message on the way."""
import unittest

import jupyter_kernel_test


class Conformance(jupyter_kernel_test.KernelTests):
    kernel_name = "bandwright"
    language_name = "bandwright"
    file_extension = ".ring"
    code_display_data = [
        {"code": "show 4 mm", "mime": "text/plain"},
        {
            "code": "profile dome = flat(width: 4 mm, height: 2 mm)\n"
            "band shank { finger ISO 57  profile dome  metal silver-925 }\n"
            "show section at 0 deg",
            "mime": "image/svg+xml",
        },
    ]
    code_generate_error = "a = 2 mm + 1 g"
    completion_samples = [{"text": "stone-r", "matches": {"stone-row"}}]
    complete_code_samples = ["a = 4 mm", "show ring", ""]
    incomplete_code_samples = ["band shank {", "a ="]
    invalid_code_samples = ["a = )"]
    code_inspect_sample = "silver-925"
    # For the history; nothing in this language is a result, all is shown.
    code_execute_result = [{"code": "show 5 mm"}, {"code": "show 6 mm"}]
    code_history_pattern = "show 5*"
    supported_history_operations = ("tail", "range", "search")

    def test_execute_result(self):
        raise unittest.SkipTest("cells show, they have no result")


if __name__ == "__main__":
    unittest.main()
