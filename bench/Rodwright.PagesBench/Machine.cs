using System.Globalization;
using System.Runtime.InteropServices;

namespace Rodwright.PagesBench;

/// <summary>What was measured on, and what else it had to do.</summary>
public static class Machine
{
    private const string LoadFile = "/proc/loadavg";

    /// <summary>Processors, framework, and where the system tells it how many programs were waiting for a processor.</summary>
    public static string Words => $"{Environment.ProcessorCount} cores, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.OSDescription}{Load}";

    private static string Load => File.Exists(LoadFile) ? string.Create(CultureInfo.InvariantCulture, $", load of the last minute {File.ReadAllText(LoadFile).Split(' ')[0]}") : "";
}
