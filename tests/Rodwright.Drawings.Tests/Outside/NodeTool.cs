using System.Diagnostics;
using System.Text.Json;
using Xunit;

namespace Rodwright.Drawings.Tests.Outside;

/// <summary>An independent program from npm, installed from its lock file beside the built tests.</summary>
/// <param name="folder">Of its package.json, from the tests' own folder.</param>
/// <param name="package">One of the packages it needs, by which one sees that it is installed.</param>
internal sealed class NodeTool(string folder, string package)
{
    private readonly Lazy<string> installed = new(() => Install(Path.Combine([AppContext.BaseDirectory, .. folder.Split('/')]), package));

    /// <summary>What a script of the folder prints of a file, read as JSON.</summary>
    /// <param name="script">Its name.</param>
    /// <param name="name">Name the file is to have.</param>
    /// <param name="file">The file.</param>
    public JsonElement Read(string script, string name, ReadOnlySpan<byte> file)
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("rodwright-").FullName, name);
        try
        {
            File.WriteAllBytes(path, file);
            return JsonDocument.Parse(Run(installed.Value, "node", script, path)).RootElement;
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    private static string Install(string folder, string package)
    {
        if (!File.Exists(Path.Combine(folder, "node_modules", package, "package.json")))
            Run(folder, "npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund");
        return folder;
    }

    private static string Run(string folder, string program, params string[] arguments)
    {
        try
        {
            var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"3D files cannot be checked: '{program} {string.Join(' ', arguments)}' failed.\n{errors.Result}\n{output}");
            return output;
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            Assert.Fail($"3D files cannot be checked: this test needs Node.js 20 or later with npm on the path ('{program}': {missing.Message}).");
            return "";
        }
    }
}
