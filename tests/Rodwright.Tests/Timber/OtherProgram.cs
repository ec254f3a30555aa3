using System.Diagnostics;
using Xunit;

namespace Rodwright.Tests.Timber;

/// <summary>Programs that are not ours, with which files are opened.</summary>
internal static class OtherProgram
{
    /// <summary>What a program prints.</summary>
    /// <param name="package">Debian's name of the package it comes in.</param>
    /// <param name="folder">Where it runs.</param>
    /// <param name="program">Its name.</param>
    /// <param name="arguments">Its arguments.</param>
    public static string Run(string package, string folder, string program, params string[] arguments)
    {
        try
        {
            var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"'{program} {string.Join(' ', arguments)}' failed.\n{errors.Result}\n{output}");
            return output;
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            Assert.Fail($"This test opens our file with '{program}' of the Debian package {package}, which ./test installs ({missing.Message}).");
            return "";
        }
    }
}
