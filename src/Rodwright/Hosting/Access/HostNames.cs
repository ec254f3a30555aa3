using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Rodwright.Hosting.Access;

/// <summary>The names and addresses this machine answers to.</summary>
internal sealed class HostNames(bool share)
{
    private readonly HashSet<string> ours = new(share ? [.. Local, .. Addresses.Select(a => a.ToString()), Machine, Machine + ".local"] : Local, StringComparer.OrdinalIgnoreCase);

    private static string[] Local => ["localhost", "127.0.0.1", "[::1]"];

    private static string Machine => Dns.GetHostName();

    /// <summary>Addresses of this machine on its networks, IPv4.</summary>
    public static IReadOnlyList<IPAddress> Addresses { get; } =
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses).Select(a => a.Address).Where(a => a.AddressFamily == AddressFamily.InterNetwork),
    ];

    /// <summary>Whether a host, without its port, is this machine.</summary>
    public bool IsOurs(string host) => ours.Contains(host);
}
