using System.Diagnostics;
using System.Text.Json;
using Xunit;

namespace Rodwright.Drawings.Tests.Gltf;

/// <summary>The independent validator of glTF files (npm package gltf-validator), installed from its lock file beside the built tests.</summary>
internal static class GltfValidator
{
    private static readonly Lazy<string> Installed = new(Install);

    /// <summary>The validator's report on a file.</summary>
    public static JsonElement Check(byte[] file)
    {
        var folder = Installed.Value;
        var path = Path.Combine(Directory.CreateTempSubdirectory("rodwright-").FullName, "model.glb");
        try
        {
            File.WriteAllBytes(path, file);
            return JsonDocument.Parse(Run(folder, "node", "check.mjs", path)).RootElement;
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    private static string Install()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "Gltf", "validator");
        if (!File.Exists(Path.Combine(folder, "node_modules", "gltf-validator", "package.json")))
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
